# Words of the table fibre-rope-slings. A key that is not here is looked for in common.ftl.

question = What may a natural fiber rope sling lift?
description = Rated loads of natural fiber rope slings by diameter and hitch, with a design factor of five.

## Read before you use it

note-tag-certificate-sling-governs = The tag or certificate of the sling governs. These federal figures are for cargo work on the waterfront where there is none.
note-older-federal-tables-withdrawn = Older federal tables, withdrawn in 2011, rated the same ropes about an eighth lower (from memory). Where two figures meet, take the lower.
note-basket-angles-vertical-60 = Basket angles are from the vertical: 60° from the vertical is 30° from the horizontal.
note-endless-slings-over-1 = Endless slings over 1-1/4 in were in no copy that was read.

## Cautions; table.toml says of which kind each is

caution-damaged-rope-is-out = Remove frozen, rotten, burnt or cut rope from service.
caution-heat-and-acid-unseen = Heat and acid may leave no trace on rope. In doubt, cut it up.

## Columns

column-sling = Sling
    .help = Kind of sling.
column-hitch = Hitch
    .help = How the sling is used.
column-angle_from_vertical = Leg angle from vertical
    .help = Angle between a basket leg and the vertical.

## Words of the columns

word-sling-eye_and_eye = Eye and eye
word-sling-endless = Endless
word-hitch-vertical = Vertical
word-hitch-choker = Choked
