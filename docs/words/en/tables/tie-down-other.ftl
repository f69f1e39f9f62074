# Words of the table tie-down-other. A key that is not here is looked for in common.ftl.

question = What may a strap or a wire rope hold on a truck?
description = Working load limits of webbing, wire rope and steel strapping for tie-down, as United States federal law prints them.

## Read before you use it

note-webbing-width-rope-diameter = Webbing by width, rope by diameter, strapping by width and thickness.
note-mark-strap-rope-counts = The mark on the strap or rope counts where there is one.
note-ropes-not-read = Fiber ropes, and strapping of other sizes, have no number here: they were recalled, not read, and no rule holds them close enough. Read them in the tables of 49 CFR 393.108, or on the mark.

## Cautions; table.toml says of which kind each is

caution-cut-strap-has-no-rating = A cut or burnt strap has no rating.

## Columns

column-material = Material
    .help = Kind of tie-down.
column-size = Size
    .help = Metric size as the law prints it; strapping: width x thickness.

## Words of the columns

word-material-synthetic_webbing = Synthetic webbing
word-material-wire_rope_6x37_fibre_core = Wire rope 6x37 fiber core
word-material-steel_strapping = Steel strapping
