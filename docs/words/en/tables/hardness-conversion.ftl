# Words of the table hardness-conversion. A key that is not here is looked for in common.ftl.

question = What does a hardness reading mean in strength?
description = Rockwell C against Vickers, Brinell and approximate tensile strength.

## Read before you use it

note-strength-columns-agree-40 = The two strength columns agree at 40 HRC (1,250 and 1,248 MPa) and differ at 50 HRC (1,760 and 1,620 MPa). Read strength as within 5% up to 45 HRC and within 10% above.

## Cautions; table.toml says of which kind each is

caution-hardness-is-no-rating = A hardness reading does not rate a part.

## Columns

column-rockwell_c = Rockwell C
    .help = Hardness in HRC.

## Quantities

quantity-vickers = Vickers
quantity-brinell = Brinell
