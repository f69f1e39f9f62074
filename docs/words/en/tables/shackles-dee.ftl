# Words of the table shackles-dee. A key that is not here is looked for in common.ftl.

question = How big is a dee shackle for a given load?
description = Dimensions of dee shackles in ship cargo gear, by safe working load and steel.

## Read before you use it

note-body-diameter-close-13 = Body diameter is close to 13 mm (mild steel) or 10.3 mm (higher tensile) times the square root of the load in tonnes.
note-dimension-tells-shackle-might = A dimension tells what a shackle might be. Only its mark tells what it is.

## Cautions; table.toml says of which kind each is

caution-not-by-measuring = Do not rate an unmarked shackle by measuring it.

## Columns

column-swl_t = Safe working load
    .help = Safe working load in tonnes.
column-steel = Steel
    .help = Steel of the shackle.

## Quantities

quantity-jaw_width = Jaw width
quantity-inside_length = Inside length
quantity-body_diameter = Body diameter
quantity-pin_diameter = Pin diameter

## Words of the columns

word-steel-either = Either steel
word-steel-mild = Mild steel
word-steel-higher_tensile = Higher tensile steel
