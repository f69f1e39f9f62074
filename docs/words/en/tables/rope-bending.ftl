# Words of the table rope-bending. A key that is not here is looked for in common.ftl.

question = What does a tight bend take from a wire rope?
description = Factor by which the load of a wire rope counts up when it is bent round a pin, by pin over rope diameter.

## Read before you use it

note-pin-hook-diameter-over = Pin or hook diameter over rope diameter, D/d. Divide the rating by the factor.
note-printed-rule-1-1 = The printed rule is 1 / (1 − 0.5 / √(D/d)). Ratios over 7 are left out: what was recalled of them was on the unsafe side.

## Cautions; table.toml says of which kind each is

caution-not-thinner-than-the-rope = Do not bend the body of a rope round anything thinner than the rope: D/d under 1.

## Columns

column-bend_ratio = D/d
    .help = Diameter of the bend over diameter of the rope.

## Quantities

quantity-bending_factor = Bending factor

## Charts

chart-bend =
    .up = The load counts this many times
    .across = Pin over rope diameter, D/d
    .title = The load counts this many times, against pin over rope diameter, D/d
chart-wire-rope = Wire rope
