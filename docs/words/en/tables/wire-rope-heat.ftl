# Words of the table wire-rope-heat. A key that is not here is looked for in common.ftl.

question = What does heat leave of a wire rope sling?
description = Share of the rating of a wire rope sling left in a temperature band, by end fitting and core.

## Read before you use it

note-dash-not-allowed-over = A dash means that it is not allowed. Over 400 °C a rope sling is never used.
note-american-rule-stricter-fibre = The American rule is stricter: fiber core out for good above 200 °F (93 °C), steel core used only below 400 °F (204 °C). This book uses the lower heat.

## Cautions; table.toml says of which kind each is

caution-fibre-core-chars-unseen = A fiber core chars unseen.

## Columns

column-core = Core
    .help = Core of the rope.

## Words of the columns

word-termination-steel_ferrule_or_flemish_eye = Steel ferrule or flemish eye
word-termination-spliced = Spliced
word-core-fibre = Fiber
word-core-steel = Steel
