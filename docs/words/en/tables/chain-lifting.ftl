# Words of the table chain-lifting. A key that is not here is looked for in common.ftl.

question = What may alloy chain lift?
description = Rated loads of grade 80 and grade 100 alloy chain slings: one, two, and three or four legs, by leg angle.

## Read before you use it

note-angle-taken-horizontal-90 = The angle is taken from the horizontal. 90° is a straight hang.
note-printed-limits-rounded-9 = Printed limits are rounded. 9/32 in of grade 80 on two legs at 45° prints 4,900 lb where the sine gives 4,950 lb. The printed one is shown.
note-four-legs-rated-three = Four legs are rated as three. On a stiff load two of them can end up with all of it.
note-7-mm-chain-called = 7 mm chain is called 9/32 in here and 1/4 in by the tie-down law. It is the same chain, with the same limit.
note-grade-100-copy-read = Grade 100 from 5/8 in on three legs, and above: read in charts of makers and their association that agree, where the copy of the federal page breaks off.
note-held-grade-relation-four-times = Held by the grade relation: four times this load is 1,000 N/mm2 over two sections, within 0.2 percent.

## Cautions; table.toml says of which kind each is

caution-too-flat = Under 30° from the horizontal: do not lift.
caution-flattest-leg = Take the angle of the flattest leg.

## Columns

column-angle_from_horizontal = Leg angle from horizontal
    .help = Angle between a leg and the horizontal.

## Charts

chart-one-leg =
    .up = One leg hanging straight, lb
    .across = Chain size, in
    .title = One leg hanging straight, lb, against chain size, in

chart-angle =
    .up = Whole sling of 3/8 in alloy chain, lb
    .across = Angle of the legs from the horizontal
    .title = Whole sling of 3/8 in alloy chain, lb, against angle of the legs from the horizontal
    .note = Flatter legs, smaller lift. { chart-dots }
