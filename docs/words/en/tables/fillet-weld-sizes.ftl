# Words of the table fillet-weld-sizes. A key that is not here is looked for in common.ftl.

question = How small may a fillet weld be?
description = Least leg of a fillet weld by the thickness of the thinner part joined, for frames and brackets you build.

## Read before you use it

note-least-for-the-heat = Thick plate draws the heat of a small bead away so fast that the weld can crack. The least leg keeps enough heat in it.
note-leg-and-throat = The leg is measured along the plate. The throat, which carries the load, is 0.7 of the leg.

## Cautions; table.toml says of which kind each is

caution-no-weld-on-rated-parts = Never weld on a hook, a shackle, a chain or an eyebolt. This is for frames and brackets of mild steel.
caution-size-is-no-strength = The least leg is not a promise of strength. Work out what the weld must carry, in the plate as well.

## Columns

column-thinner_part = Thinner part
    .help = Thickness of the thinner of the two parts that are joined.

## Quantities

quantity-least_leg = Least leg

## Words of the columns

word-thinner_part-to_quarter = to 1/4 in (6 mm)
word-thinner_part-quarter_to_half = over 1/4 to 1/2 in (6 to 13 mm)
word-thinner_part-half_to_three_quarters = over 1/2 to 3/4 in (13 to 19 mm)
word-thinner_part-over_three_quarters = over 3/4 in (19 mm)
