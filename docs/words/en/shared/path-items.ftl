# The parts of a line of rigging, as load-path and pull-trial ask for them and judge them. `$part` is a part's name.

## What is asked of the rigging

input-use = How the parts are used
    .help = In line means that no part is pulled sideways, choked, or bent round a pin or an edge, and that each hook holds in its bowl and not at its tip. If you leave it empty, nothing can be rated.
option-use-plain = all are in line, between 32 and 120 °F (0 and 49 °C)
option-use-not-straight = some are pulled sideways, choked or bent; none are hot or cold
option-use-hot-or-cold = all are in line; some are hotter or colder than that
option-use-both = some are pulled sideways, choked or bent, and some are hot or cold
input-load_kind = The load
    .help = A stiff load can hang on only two of its three or four legs. Only a flexible load can settle onto three.
option-load_kind-stiff = stiff, such as an engine, a frame or a box
option-load_kind-flexible = flexible, such as a bundle of bars or a net

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
option-items-kind-fibre-rope = Fiber rope sling
option-items-kind-turnbuckle = Turnbuckle
option-items-kind-hoist = Hoist, trolley or beam
option-items-kind-other = Something else
input-items-condition = Mark and condition
    .help = Read the mark or tag and look at the whole part for welds, heat and bends. If you leave it empty, it counts as not inspected.
option-items-condition-marked-good = mark or tag is readable; inspected and found good
option-items-condition-unmarked = no readable mark or tag
option-items-condition-worn = worn
option-items-condition-welded = welded on, or weld spatter on it
option-items-condition-heated = heated, or with heat color
option-items-condition-bent = bent, twisted or stretched
option-items-condition-home-made = home-made or mended
input-items-rating = Rating on its mark or tag
    .help = Use the working load limit (WLL) on the mark. If you leave it empty, it is looked up by kind, grade and size. If both are known, they must agree.
input-items-grade = Grade
    .help = The mark that is stamped on the chain, hook or ring, such as 80 or G100. Shackles: A or B.
input-items-size = Size
    .help = Such as 3/8, 10 mm. Eyebolts, turnbuckles: the thread. Ring: the thickness of its bar. Web slings and hoists go by their tag alone.
input-items-rope_class = Wire rope by its tag
    .help = The table rates one class only. For any other, use the rating on its own tag.
option-items-rope_class-6x19-iwrc-eips-pressed = 6×19, steel core (IWRC), extra improved plow steel (EIPS), pressed eyes
option-items-rope_class-other = another class, core, grade or eye
input-items-legs = How many side by side
    .help = Legs of a sling that share the load at this place, and the shackles or eyebolts that those legs pull on.
input-items-angle = Angle of those legs from the horizontal
    .help = Needed for two legs or more. The pull on an eyebolt is off its shank by 90° less this angle.
input-items-side_angle = Pull off its own line
    .help = Give 0° for a pull in line with the bow of a shackle or the shank of an eyebolt. A hook that holds at its tip has no rating: leave this empty. Asked only if some parts are pulled sideways.
input-items-hitch = How the sling runs
    .help = Asked only if some parts are pulled sideways, choked or bent.
option-items-hitch-straight = straight from end to end
option-items-hitch-choked = choked about the load
option-items-hitch-bent = bent round a pin or a corner
option-items-hitch-choked-and-bent = choked, and bent round a pin or a corner
input-items-temperature = Its temperature in use
    .help = Asked only if some parts get hot or cold. Then give it for every part.
input-items-choke_angle = Angle of the choke
    .help = 180° is straight through the eye, 0° is bent right back.
input-items-bend_ratio = Bend: object / thickness of the sling
    .help = Diameter of what it bends round, divided by the diameter of the rope or the wire of a link (D/d). A choked sling bends round the load.

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
        [fibre-rope] fiber rope sling
        [turnbuckle] turnbuckle
        [hoist] hoist, trolley or beam
       *[other] something else
    }

## Where a rating comes from

as-marked = as marked
as-printed = printed { $cell }
as-printed-under-its-mark = printed { $cell }, lower than its mark
share-off-shank = pulled { PLACES($off, places: 0) } off its shank
share-within-temperatures = within { $low } to { $high }

## Why a part may not be used

part-not-looked-at = you have not said that the part “{ $part }” was found good and that its mark is readable
part-not-passed = the last full inspection of the part “{ $part }” did not pass, so it may not be used until one does
part-line-not-said = you have not said whether the part “{ $part }” is pulled in its own line
part-hitch-not-said = you have not said whether the part “{ $part }” runs straight, is choked or is bent round something
part-temperature-not-said = you have not said how hot or cold the part “{ $part }” gets in use
part-bend-without-rule = the part “{ $part }” is bent round a pin or a corner, and this book has no figure for what that leaves of its rating
part-bent-without-figure = the part “{ $part }” bends round less than { $times } times its thickness, and this book has no figure for what that leaves of its rating
part-unmarked = the part “{ $part }” has no readable mark, so nobody knows its rating
part-worn = the part “{ $part }” is worn, and must pass its limits of wear first
part-welded = the part “{ $part }” was welded, and no shop test gives its rating back
part-heated = the part “{ $part }” was heated, and no shop test gives its rating back
part-bent = the part “{ $part }” is bent, twisted or stretched, and straightening does not give its rating back
part-home-made = the part “{ $part }” is home-made or mended, so it has no rating
part-ties-down-only = the mark of the part “{ $part }” can mean grade { $grade }, which is for tying loads down and has no lifting rating
part-grade-without-use = the part “{ $part }” is marked { $grade }, and the tables do not say whether that grade may lift
part-without-rope-class = for the part “{ $part }” you gave neither a rating from its tag nor a class of rope, so its rating is not known
part-rope-of-another-class = the part “{ $part }” is not of the class that the table rates, so only its own tag gives its rating
part-without-rating = you gave no rating for the part “{ $part }”
part-without-grade = you gave no grade for the part “{ $part }”
part-not-in-tables = the part “{ $part }” cannot be rated: { $reason }
part-without-shoulder = the part “{ $part }” has no shoulder and is pulled { PLACES($off, places: 0) } off its shank, but without a shoulder it may be pulled only in line with the shank
part-pulled-too-far-off-shank = the part “{ $part }” is pulled { PLACES($off, places: 0) } off its shank, and no eyebolt may be pulled more than 45° off
part-pulled-off-line = the part “{ $part }” is pulled { PLACES($off, places: 0) } off its line, and only its maker's table says how far its rating falls
part-pulled-too-far-off-line = the part “{ $part }” is pulled { PLACES($off, places: 0) } off its line, and more than 90° is not allowed
part-outside-its-temperatures = the part “{ $part }” is at { $at }, outside { $low } to { $high }, and only its maker can say what is left of its rating
part-hot-without-grade = the part “{ $part }” gets hot or cold in use, and without its grade no heat rule can be read
part-forbidden-at-its-temperature = the part “{ $part }” may not be used at { $at } ({ $rule })
part-weaker-for-good = the part “{ $part }” would stay weaker for good after { $at } ({ $rule })
part-without-heat-rule = the part “{ $part }” is at { $at }, and no heat rule covers grade { $grade }
part-bent-too-hard = the part “{ $part }” is bent round something thinner than itself

not-rated-grade-not-of-shackles = grade { $grade } is not in the shackle table; it has grades A and B
not-rated-thread-not-readable = size “{ $size }” { $reason }
not-rated-thread-not-listed = size “{ $size }” is not in the eyebolt table; threads are { $threads } in
refused-part-not-rated = is not rated: { $reason }. Or give the rating that is marked on the part “{ $part }”.
refused-grade-not-known = is not a mark that this book knows. Give it as it stands on the part, such as 80 or G100; leave it empty if it cannot be read.
refused-shackle-grade-not-known = is not a grade of shackles that this book knows. It knows A and B, and the marks 4, 6 and 8; leave it empty if it cannot be read.
refused-mark-over-such-part = is more than any part of that kind and size bears: { $most } at most (our own bound, no source). Read its mark and its size again.
refused-mark-against-table = does not agree with the { $printed } that the table prints for this kind, grade and size. One of them was misread. If the mark on the part “{ $part }” is right, leave its size empty, and the mark decides.
refused-said-to-be-straight = says that this part is not in line, but above you say that all parts are in line. Change one of them.
refused-said-to-be-cool = is a temperature of its own, but above you say that no part works hot or cold. Change one of them, or leave this empty.
refused-hitch-says-otherwise = does not go with how the sling is said to run. Change one of them, or leave this empty.
refused-choke-angle-missing = is missing. A choker hitch that is pulled tight holds less. Give its angle, such as 120°.
refused-bend-ratio-missing = is missing. A tight bend can halve the strength of a rope, and a choked sling bends round the load. Give the ratio D/d, such as 8.
refused-angle-missing = is needed where several share the load. Give their angle from the horizontal, such as 60°.
refused-one-hangs-straight = belongs to two or more legs: one part by itself hangs straight down. Give how many work side by side, or leave this empty.
