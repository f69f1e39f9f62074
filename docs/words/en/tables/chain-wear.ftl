# Words of the table chain-wear. A key that is not here is looked for in common.ftl.

question = How thin may a chain link get?
description = Least thickness at any point of a link, and most wear, by chain size and by source.

## Read before you use it

note-tables-disagree-older-federal = Two tables disagree: by the older federal one a 3/8 in link may wear to 19/64 in (0.297 in), by Washington State’s, which follows ASME, only to 0.342 in. Use the second: it is the stricter.
note-measure-bearing-point-between = Measure at the bearing point between two links, in two directions, on the worst link.
note-federal-tables-size-less = In the federal tables the size less the most wear is the least thickness, in every row.
note-read-michigans-print-same-table = Read in Michigan's print of the same table.
note-printed-in-sixty-fourths = Printed in sixty-fourths.
note-asme-pattern-figure-rows-table = ASME-pattern figure; the rows of Table 13 were not shown in the copy.

## Cautions; table.toml says of which kind each is

caution-ends-whatever-its-thickness = Stretch, nicks, heat, twist and weld spatter remove a chain from service, whatever its thickness.

## Columns

column-default = Our default
    .help = yes on the strictest least thickness of a size, which is the one used by the worksheets.

## Quantities

quantity-minimum_thickness = Minimum thickness
quantity-maximum_wear = Maximum wear

## Words of the columns

word-source-michigan-r408 = Michigan R 408
