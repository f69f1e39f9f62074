# Words of the table tie-down-rules. A key that is not here is looked for in common.ftl.

question = How must a load be tied down on the road?
description = The rules of United States federal law for tie-downs, in plain words.

## Read before you use it

note-state-rules-other-countries = State rules and other countries differ.

## Words of the columns

word-item-system = System
word-item-tie_down = Tie down
word-item-cargo = Cargo
word-item-aggregate = Aggregate
word-item-limit = Limit
word-item-count = Count
word-item-heavy_equipment = Heavy equipment
word-rule-braking = Braking
word-rule-working-load = Working load
word-rule-downward = Downward
word-rule-no-damage = No damage
word-rule-anchor-points = Anchor points
word-rule-no-knots = No knots
word-rule-repairs = Repairs
word-rule-cannot-loosen = Cannot loosen
word-rule-edge-protection = Edge protection
word-rule-rolling = Rolling
word-rule-side-by-side = Side by side
word-rule-half-the-weight = Half the weight
word-rule-direct = Direct
word-rule-same-side = Same side
word-rule-other-side = Other side
word-rule-weakest-part = Weakest part
word-rule-mark-governs = Mark governs
word-rule-unmarked-cordage = Unmarked cordage
word-rule-unmarked-chain = Unmarked chain
word-rule-unmarked-in-canada = Unmarked, in Canada
word-rule-wire-rope = Wire rope
word-rule-unknown-wire-rope = Unknown wire rope
word-rule-manila = Manila
word-rule-friction-mat = Friction mat
word-rule-short-light = Short light
word-rule-short-heavy = Short heavy
word-rule-medium = Medium
word-rule-long = Long
word-rule-blocked = Blocked
word-rule-special = Special
word-rule-tightening = Tightening
word-rule-who = Who
word-rule-booms = Booms
word-rule-articulated = Articulated
word-rule-four = Four
word-rule-where = Where
