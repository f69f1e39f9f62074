# The parts of a string of rigging, as load-path and pull-trial ask for them and judge them. `$part` is a part's name.

## What is asked of each part

input-items-label = Part
    .help = Your own word for it, such as top hook.
input-items-kind = Kind
option-items-kind-chain = Chain
option-items-kind-hook = Hook
option-items-kind-shackle = Shackle
option-items-kind-ring = Ring or link
option-items-kind-eyebolt = Eyebolt with shoulder
option-items-kind-eyebolt-plain = Eyebolt without shoulder
option-items-kind-wire-rope = Wire rope sling
option-items-kind-web-sling = Web or round sling
option-items-kind-fibre-rope = Fibre rope sling
option-items-kind-turnbuckle = Turnbuckle
option-items-kind-hoist = Hoist, trolley or beam
option-items-kind-other = Something else
input-items-condition = Condition
    .help = What you see. Any weld, heat, bend or missing mark counts.
option-items-condition-marked-good = marked, and found good
option-items-condition-unmarked = no readable mark
option-items-condition-worn = worn
option-items-condition-welded = welded on
option-items-condition-heated = heated
option-items-condition-bent = bent or twisted
option-items-condition-home-made = home-made
input-items-rating = Rating on its mark or tag
    .help = The mark governs. Left empty: looked up by kind, grade and size.
input-items-grade = Grade
    .help = Chain and hooks: 80 or 100. Shackles: A or B.
input-items-size = Size
    .help = Such as 3/8, 10 mm. Eyebolts: the thread.
input-items-legs = How many side by side
    .help = Legs of a sling that share the load at this place. Of four, two are counted.
input-items-angle = Angle of those legs from the horizontal
    .help = 90° for anything that hangs straight.
input-items-side_angle = Pull off its own line
    .help = 0° for a pull in line with the bow of a shackle or the shank of an eyebolt.
input-items-temperature = Its temperature in use
    .help = Only if it works hot or very cold.
input-items-choke_angle = Angle of the choke
    .help = Only if the sling chokes the load: 180° runs straight through, 0° bends right back.
input-items-bend_ratio = Bend: object / rope diameter
    .help = Only if the rope bends round a pin or a corner.

## What a part without a name is called

part-by-place = { $place }. { $kind ->
        [chain] chain
        [hook] hook
        [shackle] shackle
        [ring] ring or link
        [eyebolt] eyebolt with shoulder
        [eyebolt-plain] eyebolt without shoulder
        [wire-rope] wire rope sling
        [web-sling] web or round sling
        [fibre-rope] fibre rope sling
        [turnbuckle] turnbuckle
        [hoist] hoist, trolley or beam
       *[other] something else
    }

## Where a rating comes from

as-marked = as marked
as-printed = printed { $cell }
share-within-temperatures = within { $low } to { $high }

## Why a part may not be used

part-unmarked = { $part } has no readable mark, so nobody knows what it is
part-worn = { $part } is worn: judge it by its limits first, and do not lift with it until it passes
part-welded = { $part } was welded on, and no test in a shop gives its rating back
part-heated = { $part } was heated, and no test in a shop gives its rating back
part-bent = { $part } is bent or twisted, and straightening does not bring it back
part-home-made = { $part } is home-made: it has no maker who tested it
part-ties-down-only = { $part } is grade { $grade }: it ties loads down and has no lifting rating
part-without-rating = { $part } has no rating given: read it from the mark, or do not use the part
part-without-grade = { $part } has no grade given: read it from the mark, or do not use the part
part-not-in-tables = { $part } cannot be rated: { $reason }
part-without-shoulder = { $part } has no shoulder: it takes a pull in line with its shank only
part-pulled-off-line = { $part } is pulled { PLACES($off, places: 0) } off its line: its rating falls, and only the maker's table says how far. Turn it into line, or give the maker's figure for that angle as its rating with the pull set to 0°
part-pulled-too-far-off-line = { $part } is pulled { PLACES($off, places: 0) } off its line; over 90° is not allowed
part-outside-its-temperatures = { $part } is at { $at }, outside { $low } to { $high }: only its maker can say what is left
part-hot-without-grade = { $part } works hot or cold, and its grade is not given: no heat rule can be read
part-forbidden-at-its-temperature = { $part } may not be used at { $at }: { $rule }
part-weaker-for-good = { $part } would stay weaker for good after { $at }: { $rule }
part-without-heat-rule = { $part } works at { $at }, and no heat rule covers grade { $grade }
part-bent-too-hard = { $part } is bent round something thinner than itself

not-rated-grade-not-of-shackles = grade { $grade } is not in the shackle table; it has grades A and B
not-rated-thread-not-readable = size “{ $size }” { $reason }
not-rated-thread-not-listed = size “{ $size }” is not in the eyebolt table; threads are { $threads } in
refused-part-not-rated = is not rated: { $reason }. Or give the rating on the mark of { $part }.
