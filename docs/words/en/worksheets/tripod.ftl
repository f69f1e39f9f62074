# Worksheet tripod.

title = Do my tripod or my shear legs buckle, spread or tip?
summary = Thrust in the legs of a tripod or of shear legs (sheer legs), pull in ties and back stay, buckling, sliding feet and tipping. A study aid.
story = The yard looks at three lengths of pipe from which it means to hang a small engine.

## What is asked

input-kind = The legs are
option-kind-tripod = three equal legs about the load (tripod)
option-kind-shear-legs = two equal legs that lean out, with a stay behind (shear legs)
input-load = Load
    .help = Everything under the hook.
input-hoist_weight = Hoist
    .help = With its chain or its tackle.
input-side_pull = The hoist pulls off plumb by
    .help = Nobody pulls quite plumb: 3° at least (our own bound, no source).
input-lead_pull = Pull led down along a leg
    .help = Of a tackle whose hauling part runs down a leg to a winch or a block. 0 for a chain hoist.
input-leg_length = Length of a leg
    .help = From its foot to where the legs meet.
input-feet_apart = Feet apart
    .help = From one foot to the next.
input-drift = The head hangs out by
    .help = Level, from the line between the two feet to under the head.
input-stay_anchor = Anchor of the stay behind the feet
    .help = Level, from the line between the two feet.
input-feet = The feet are
option-feet-loose = loose on the floor, or I do not know
option-feet-tied = tied to each other all round
option-feet-held = let into holes, or staked so that they can move no way
input-tie_rating = Rating of a tie
    .help = The weakest of its chain, rope or bar and what holds its ends.
input-stay_rating = Rating of the stay
    .help = The weakest of its rope or chain, its ends and its anchor.
input-design_factor = Design factor
    .help = 3 for lifting by common practice, no source; 1.67 is the least for buildings.

## What is found

result-weakest = Weakest
result-weakest_share = Of the weakest is used
result-not_more_than = Not more than this load here (no rating)
result-checks = Each check
column-checks-check = Check
column-checks-asked = Asked
column-checks-takes = Takes
column-checks-used = Used
row-checks = { $check }: { $used } used; { $state ->
        [fail] too much
       *[pass] no more than it takes
    }
result-leg_thrust = The harder pressed leg carries
result-buckles_at = A leg alone buckles at, with its factor
result-foot_thrust = Pushes a foot outward with
result-tie_pull = Pull in a tie between two feet
result-ties_used = Of the ties is used
result-stay_pull = Pull in the stay
result-stay_used = Of the stay is used
result-stay_angle = Stay, from the level
result-back_push = Pushes both feet back with
result-tips_at = Tips when the hoist pulls off plumb by
result-head_height = Head over the floor
result-leg_weight = A leg weighs
result-slenderness = Length of a leg over its least radius (slenderness)

check-legs = a leg buckles
check-tips = it tips over
check-feet = the feet slide
check-ties = a tie between the feet parts
check-stay = the stay parts

## The headline and the cautions

first = First, { $weakest }: { $weakest_share } of what it takes is used.
no-more = { $not_more_than ->
        [absent] { "" }
       *[other] The legs carry not more than { $not_more_than } here by these formulas, and perhaps less.
    }

reason-wall-too-thin =
    .headline = Nobody can say what these legs carry: their wall is so thin that it buckles by itself. Do not lift with them.
    .caution = The wall is too thin for these formulas.
reason-over-the-weakest =
    .headline = Do not lift this. { first } { no-more }
    .caution = A part is asked for more than it takes. Do not lift this load from these legs.
reason-over-the-gear =
    .headline = Do not lift this. A tie or the stay is asked for more than its rating. { no-more }
    .caution = A tie or the stay is asked for more than its rating.
reason-head-not-checked =
    .headline = { first } { no-more } The head was not checked, and it may be weaker. It is a figure to study, not a rating: legs without a plate have none.
    .caution = What joins the legs at the head was not checked. A bolt bends there, a lashing slips, and legs that pass beside each other bend.
reason-unrated =
    .caution = These legs are unrated. Rated ones are designed by an engineer, proved with a test load by somebody who answers for the test, and marked with their load, their maker and their number.
reason-tie-the-feet =
    .headline = { first } { no-more } Tie the feet together first. This is no rating.
    .caution = Tie the feet to each other, or let them into holes. A little oil or dust on the floor lets them slide.
reason-feet-must-hold =
    .caution = The holes or stakes must hold each foot outward, and the feet of shear legs backward as well. They were not checked.
reason-ties-not-checked =
    .headline = { first } { no-more } The ties were not checked. This is no rating.
    .caution = Hold the pull in a tie against the rating of its weakest part.
reason-stay-not-checked =
    .headline = { first } { no-more } The stay was not checked. This is no rating.
    .caution = Hold the pull in the stay against the rating of its weakest part.
reason-anchor-of-the-stay =
    .caution = The stay pulls its anchor up as well as forward. Without the stay the legs fall with the load. It is made for half the load at least, by an old rule of riggers.
reason-feet-wide =
    .caution = The feet stand farther apart than a third of a leg (an old military rule): the legs press hard against each other.
reason-leans-far =
    .caution = The head hangs out by more than a fifth of its height (the same rule). Stay and legs are pulled much harder the farther it leans.
reason-up-and-down-only =
    .caution = A tripod lifts and lowers. Do not pull the load sideways from it, and do not swing it. One leg lifts, and the tripod falls.
reason-slender =
    .caution = The legs are very slender (length over least radius over 200, AISC 360-10 E2, from memory). A knock or a bend that is hard to see takes much of their strength.
reason-small-factor =
    .headline = { first } { no-more } A factor under 3 is not for lifting. This is no rating.
    .caution = Common practice for lifting is a factor of 3. Less is for buildings, whose loads do not jerk.
reason-not-counted =
    .caution = These formulas know nothing of bent legs, of a soft or uneven floor, of wood, or of a load that jerks.

## The working

used-of = { OWN($asked) } / { OWN($takes) }
step-hangs = Hangs from the head
    .formula = 1.10 × (load + hoist) × gravity
    .numbers = 1.10 × ({ OWN($load) } + { OWN($hoist_weight) })
    .result = { $hangs }
step-head = Height of the head
    .formula = { $kind ->
        [shear-legs] √(leg² − (feet / 2)² − out²)
       *[tripod] √(leg² − feet² / 3)
    }
    .numbers = leg { OWN($leg_length) }, feet { OWN($feet_apart) }
    .result = { $head }
step-tripod-leg = Thrust in a leg
    .formula = W / (3 cos t) + 2 F / (3 sin t) + the leg's weight + pull led down
    .numbers = { OWN($down) } / (3 cos { $lean }) + 2 × { OWN($level) } / (3 sin { $lean }) + { OWN($leg_weight) } + { OWN($lead_pull) }
    .result = { $leg_thrust }
step-tripod-tie = Pull in a tie
    .formula = thrust × sin t / √3
    .numbers = { OWN($leg_thrust) } × sin { $lean } / √3
    .result = { $tie_pull }
step-stay = Pull in the stay
    .formula = (W × out + F × height) / (anchor × sin g), and half of what hangs at least
    .numbers = ({ OWN($down) } × { OWN($drift) } + { OWN($level) } × { OWN($head_height) }) / ({ OWN($stay_anchor) } × sin { $stay_angle })
    .result = { $stay_pull }
step-pair = Thrust of both legs
    .formula = (W + stay × sin g) / cos a
    .numbers = ({ OWN($down) } + stay × sin { $stay_angle }) / cos { $lean }
    .result = { $pair }
step-shear-leg = Thrust in a leg
    .formula = both / (2 cos s) + F / (2 sin s) + the leg's weight + pull led down
    .numbers = { OWN($pair) } / (2 cos { $half }) + { OWN($level) } / (2 sin { $half }) + { OWN($leg_weight) } + { OWN($lead_pull) }
    .result = { $leg_thrust }
step-shear-tie = Pull in a tie
    .formula = thrust × sin s
    .numbers = { OWN($leg_thrust) } × sin { $half }
    .result = { $tie_pull }
step-back = Pushes both feet back
    .formula = both × sin a
    .numbers = { OWN($pair) } × sin { $lean }
    .result = { $back_push }
step-check-legs = Legs
    .formula = thrust and its own bending, AISC 360-22 E3 and H1-1, K = 1
    .numbers = thrust { used-of }, and its bending
    .result = { $used }
step-check-tips = Tipping
    .formula = tan p / (tan of the angle at which it tips / 1.5)
    .numbers = { $asked } / { $takes }
    .result = { $used }
step-check-feet = Feet
    .formula = level over upright push of a foot / friction 0.2
    .numbers = { $asked } / { $takes }
    .result = { $used }
step-check-ties = Ties
    .formula = pull / rating
    .numbers = { used-of }
    .result = { $used }
step-check-stay = Stay
    .formula = pull / rating
    .numbers = { used-of }
    .result = { $used }

## Why a result is absent

absent-no-stay = a tripod has no stay
absent-ties-not-checked = no ties were checked
absent-stay-not-checked = the stay was not checked
absent-not-all-checked = ties or stay were not checked

## Refusals

refused-legs-lie-flat = is so much that the legs of { $leg } lie almost flat. Give less.

## The drawing

figure = The legs to scale, { $high } high, from the side and from the front. { $weakest ->
        [absent] Their weakest part is not known.
       *[other] First, { $weakest }.
    }
