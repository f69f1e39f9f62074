# Drawings of the pages on lifting. A message is the caption of its drawing; its parts are the labels.

times = { $factor } ×
left-end = left
right-end = right

force-triangles = One leg of two under { $load }, drawn to one scale. Each vertical arrow is half of the load. The flatter the leg, the longer the arrow along it. { $angles }.
    .first = At { $angle } the leg pulls { $pull } along itself and { $side } sideways
    .next = at { $angle } it pulls { $pull } along itself and { $side } sideways
    .upright = each leg holds up { OWN($upright) }

angle-curve = The load angle factor, by which a leg's share of the load is multiplied: { $factors }. The dotted part is below { $lowest }, where no sling is used.
    .point = { $factor } at { $angle }
    .stop = stop
    .axis = angle from the horizontal, and what it multiplies

tape-test = Three pairs of legs over one spread. { $shares }.
    .shares = At { $angle } the leg is { $leg } times the spread, and the hook is { $high } times the spread above the pick points
    .steep = { $angle }: leg = spread
    .middle = { $angle }: half spread high
    .flat = { $angle }: no flatter
    .spread = spread

angle-names = One pair of legs and three names for its angle: { $flat } from the horizontal, { $upright } from the vertical, { $between } between the legs. This book counts from the horizontal.
    .flat = { $angle } from horizontal
    .upright = { $angle } from vertical
    .between = { $angle } between the legs

two-of-four = A rigid plate of { $load } on four legs at { $angle }. Two opposite legs are a little shorter. They pull { $two } each, and the two dashed legs hang slack. If all four shared alike, each would pull { $four }.
    .slack = slack

hook-over-balance = Left: the hook is { $off } to one side of the center of gravity of a load with { $spread } between its pick points. Right: when it leaves the floor, the load swings until its center of gravity is under the hook. It hangs { $tilt } out of level, with the heavy end down. The leg at the heavy end pulls { $heavy }, the other { $light }.
    .point = center of gravity
    .floor = on the floor
    .air = in the air: { $tilt } down

one-leg-longer = A load of { $load } with its center of gravity midway. The left leg is { $left } long, and the right one is { $longer } longer. The load hangs { $tilt } out of level, with the { $end } end down. The legs pull { $left_pull } and { $right_pull }.
    .tilt = { $tilt } out of level

steep-and-flat = A load of { $load } on a flat leg at 30° and a steep leg at 60°, with its center of gravity under the hook. The flat leg pulls { $flat }, the steep one { $steep }. Both pull equally hard sideways, so the steep one must hold up three quarters of the load.

not-doubled = Two riggings seen from the side. Left, four parts in line: three are rated { $strong }, and one is rated { $weak }. Right, two chains of { $strong } each hang on one ring rated { $weak }. Neither may carry more than { $weak }, because the whole load goes through the part with that rating.
    .in-line = in line
    .side-by-side = side by side, one ring
    .ring = ring { OWN($rating) }
    .whole = neither may carry more than this

drop-curve = How many times the load at rest the peak pull is. The height of the fall is counted in stretches of the sling under the load at rest: { $points }. Even without a fall, a load that is let go all at once pulls double.
    .point = { $factor } at { $fall }
    .axis = height of fall, in stretches under the load at rest
