# Drawings of the pages on lifting. A message is the caption of its drawing; its parts are the labels.

times = { $factor } ×
left-end = left
right-end = right

force-triangles = One leg of two under { $load }, drawn to one scale. Every arrow up is the same half of the load. The flatter the leg, the longer its own arrow. { $angles }.
    .first = At { $angle }: { $pull } along the leg, { $side } sideways
    .next = at { $angle }: { $pull } along the leg, { $side } sideways
    .upright = each leg holds up { OWN($upright) }

angle-curve = The factor by which a leg's share of the load grows into its pull: { $factors }. The dotted part is under { $lowest }, where no sling is used.
    .point = { $factor } at { $angle }
    .stop = stop
    .axis = angle from the horizontal, and what it multiplies

tape-test = Three pairs of legs over one spread. { $shares }.
    .shares = { $angle }: leg { $leg } of the spread, hook { $high } of the spread high
    .steep = { $angle }: leg = spread
    .middle = { $angle }: half spread high
    .flat = { $angle }: no flatter
    .spread = spread

angle-names = One pair of legs and three names for its angle: { $flat } from the horizontal, { $upright } from the vertical, { $between } between the legs. This book counts from the horizontal.
    .flat = { $angle } from horizontal
    .upright = { $angle } from vertical
    .between = { $angle } between the legs

two-of-four = A stiff plate of { $load } on four legs at { $angle }. Two opposite legs are a hair shorter: they pull { $two } each, and the two dashed legs hang slack. If all four shared alike it would be { $four } each.
    .slack = slack

hook-over-balance = Left: the hook stands { $off } beside the balance point of a load with { $spread } between its picks. Right: as soon as it leaves the floor, it swings until the balance point is under the hook and hangs { $tilt } out of level, the heavy end down. The leg at the heavy end pulls { $heavy }, the other { $light }.
    .point = balance point
    .floor = on the floor
    .air = in the air: { $tilt } down

one-leg-longer = A load of { $load }, balance point midway. The left leg is { $left } long, the right one { $longer } longer. It hangs { $tilt } out of level, the { $end } end down; the legs pull { $left_pull } and { $right_pull }.
    .tilt = { $tilt } out of level

not-doubled = Two strings seen from the side. Left, four parts in line: three rated { $strong }, one rated { $weak }. Right, two chains of { $strong } each under one ring rated { $weak }. Neither string may carry more than { $weak }: what all of the load goes through decides.
    .in-line = in line
    .side-by-side = side by side, one ring
    .ring = ring { OWN($rating) }
    .whole = both strings carry no more than this

drop-curve = The peak pull over the quiet load, against the height of the fall counted in stretches that the quiet load gives: { $points }. Even without a fall, a load that is let go at once pulls double.
    .point = { $factor } at { $fall }
    .axis = height of fall, in stretches under the quiet load
