# Words of the table tie-down-abroad. A key that is not here is looked for in common.ftl.

question = How do Canada and Europe tie a load down?
description = Where the rules of Canada, Europe and the United Kingdom differ from those of the United States, in plain words.

## Read before you use it

note-short-readings = Short readings of rules that were mostly seen in reprints. Ask the authority of the place where you drive.

## Columns

column-place = Place
    .help = Where the rule holds.

## Words of the columns

word-place-canada = Canada
word-place-europe = Europe
word-place-uk = United Kingdom
word-item-limit = Limit
word-item-aggregate = All tie-downs together
word-item-driver = The driver
word-item-scope = Vehicles
word-item-system = The load
word-item-tie_down = Tie-down
word-item-anchor = Anchor
word-rule-unmarked = No mark
word-rule-one-label = One label
word-rule-half-the-weight = Half the weight
word-rule-friction-mat = Friction mat
word-rule-first-check = First check
word-rule-vehicles = Which ones
word-rule-forces = Forces
word-rule-methods = Ways to hold it
word-rule-own-strength = Own strength
word-rule-label-missing = Label missing
word-rule-no-tension = No tension on the label
word-rule-two-at-least = Two at least
word-rule-not-mixed = Never mixed
word-rule-hand-force = By hand
word-rule-one-each = One lashing each
word-rule-rope-hooks = Rope hooks
word-rule-no-damage = No damage
