# Words of the table tie-down-other. A key that is not here is looked for in common.ftl.

question = What may straps, ropes and strapping hold on a truck?
description = Working load limits of webbing, wire rope, fibre ropes and steel strapping for tie-down, as United States federal law prints them.

## Read before you use it

note-webbing-width-rope-diameter = Webbing by width, rope by diameter, strapping by width and thickness.
note-mark-strap-rope-counts = The mark on the strap or rope counts where there is one.
note-1-2-manila-left = 1/2 in manila is left out: its pounds and kilograms do not agree, and it was not seen in text.

## Cautions; table.toml says of which kind each is

caution-cut-strap-has-no-rating = A cut or burnt strap has no rating.

## Columns

column-material = Material
    .help = Kind of tie-down.
column-size = Size
    .help = Metric size as the law prints it; strapping: width x thickness.

## Words of the columns

word-material-synthetic_webbing = Synthetic webbing
word-material-wire_rope_6x37_fibre_core = Wire rope 6x37 fibre core
word-material-manila_rope = Manila rope
word-material-polypropylene_rope = Polypropylene rope
word-material-polyester_rope = Polyester rope
word-material-nylon_rope = Nylon rope
word-material-double_braided_nylon_rope = Double braided nylon rope
word-material-steel_strapping = Steel strapping
