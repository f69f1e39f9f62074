# Words of the table eye-hooks. A key that is not here is looked for in common.ftl.

question = What may a forged eye hook carry?
description = Working load limits of forged eye hooks by the letter of their size (frame), in carbon and in alloy steel.

## Read before you use it

note-one-body-two-steels = One forged body is made of carbon or of alloy steel, and the two look alike. Read the steel and the limit on the hook. Where you cannot tell, count it as carbon steel.
note-letter-of-one-maker = From one maker's sheet. The letter is that maker's name for the size; with another maker the same letter is another hook.
note-which-ton = The sheet prints t without saying which ton. It is counted here as the short ton of 2,000 lb, the smaller of the two.

## Cautions; table.toml says of which kind each is

caution-no-limit-on-the-hook = The limit on the hook governs. Do not lift with a hook on which you can read none.

## Columns

column-frame = Eye hook
    .help = Letter forged into the body of the hook (frame).


## Quantities

quantity-working_load_limit_carbon = Working load limit in carbon steel
quantity-working_load_limit_alloy = Working load limit in alloy steel
