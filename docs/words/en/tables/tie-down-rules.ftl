# Words of the table tie-down-rules. A key that is not here is looked for in common.ftl.

question = How must a load be tied down on the road?
description = The rules of United States federal law for tie-downs, in plain words.

## Read before you use it

note-state-rules-other-countries = State rules differ. Canada and Europe have a table of their own.
note-plate-and-pipe-general = Plate, bar and small pipe have no section of their own: the general rules hold, and round pieces are chocked. Machines without wheels follow the general rules too.

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
word-item-front_end = Front end structure
word-item-bundle = Bundles
word-item-coil = Metal coils
word-item-light_vehicle = Cars, light trucks, vans
word-item-driver = The driver
word-rule-equivalent = What counts as met
word-rule-dunnage = Dunnage and chocks
word-rule-no-weld-on-frame = No weld on the frame
word-rule-commodity-first = Kinds of cargo first
word-rule-height = Height
word-rule-wide-enough = Width
word-rule-strength-low = Strength, lower than 6 ft
word-rule-strength-high = Strength, 6 ft or higher
word-rule-one-tier = One tier
word-rule-eye-up = Eye up
word-rule-eye-crosswise = Eye crosswise
word-rule-no-cross = Never crossed
word-rule-eye-lengthwise = Eye lengthwise
word-rule-two = Two at least
word-rule-mounting-points = Mounting points
word-rule-wheel-straps = Straps on wheels
word-rule-before = Before driving
word-rule-first-check = First check
word-rule-then-every = Then again
