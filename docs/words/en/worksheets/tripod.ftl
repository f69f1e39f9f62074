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
    .help = Its weight, with its chain or its tackle.
input-side_pull = The hoist pulls off plumb by
    .help = Nobody pulls quite plumb: 3° at least (our own bound, no source).
input-lead_pull = Pull led down along a leg
    .help = The pull of a tackle whose hauling part runs down a leg to a winch or a block. Give 0 for a chain hoist.
input-leg_length = Length of a leg
    .help = From its foot to where the legs meet.
input-feet_apart = Feet apart
    .help = From one foot to the next.
input-drift = The head hangs out by
    .help = Measured level, from the line between the two feet to the point under the head.
input-stay_anchor = Anchor of the stay behind the feet
    .help = Measured level, from the line between the two feet.
input-feet = The feet are
option-feet-loose = loose on the floor, or I do not know
option-feet-tied = tied to each other all round
option-feet-held = let into holes, or staked so that they can move no way
input-tie_rating = Rating of a tie
    .help = The weakest of its chain, rope or bar and what holds its ends.
input-stay_rating = Rating of the stay
    .help = The weakest of its rope or chain, its ends and its anchor.
input-head = What joins the legs at the head
option-head-not-checked = something else, or I do not know
option-head-lashed = a lashing, or a chain wound about them
option-head-pin = a bolt or pin through all legs
option-head-marked = a head that is marked with its rating
input-head_rating = Rating of the head
    .help = As marked on it, for the whole load.
input-head_pin = Diameter of the bolt
    .help = Where it is thinnest: in its thread, if a leg lies there.
input-head_apart = From leg to leg along the bolt
    .help = From the middle of one to the middle of the next.
input-head_yield = Yield strength of the bolt
    .help = 36,000 psi for a plain bolt (ASTM A307, from memory). A hard bolt only by the mark on its head.
option-section-wood = A wooden pole
input-design_factor = Design factor
    .help = 3 for lifting by common practice, no source; 1.67 is the least for buildings.

## What is found

result-weakest = Weakest point
result-weakest_share = Part used of what the weakest point holds
result-not_more_than = Not more than this load here (no rating)
result-checks = Each check
column-checks-check = Check
column-checks-asked = Load on it
column-checks-takes = What it holds
column-checks-used = Used
row-checks = { $check }: { $used } used; { $state ->
        [fail] too much
       *[pass] within what it holds
    }
result-leg_thrust = Thrust in the more heavily loaded leg
result-buckles_at = Thrust that one leg alone holds, factor counted
result-foot_thrust = Outward push of a foot
result-tie_pull = Pull in a tie between two feet
result-ties_used = Part used of the rating of the ties
result-stay_pull = Pull in the stay
result-stay_used = Part used of the rating of the stay
result-stay_angle = Angle of the stay from the horizontal
result-head_used = Part used of what the head holds
result-back_push = Backward push of both feet together
result-tips_at = It tips when the hoist pulls off plumb by
result-head_height = Head over the floor
result-leg_weight = Weight of a leg
result-slenderness = Length of a leg over its least radius (slenderness)

check-legs = a leg buckles
check-tips = it tips over
check-feet = the feet slide
check-ties = a tie between the feet breaks
check-stay = the stay breaks
check-head = the head breaks

## The headline and the cautions

first = { $weakest_share ->
        [absent] Not everything that holds it was checked.
       *[other] The weakest point: { $weakest }. The load uses { $weakest_share } of what that allows.
    }
no-more = { $not_more_than ->
        [absent] { "" }
       *[other] { " " }By these formulas the legs hold not more than { $not_more_than } here, and perhaps less.
    }

reason-wall-too-thin =
    .headline = Nobody can say what these legs hold: their wall is so thin that it buckles by itself. Do not lift with them.
    .caution = The wall is too thin for these formulas.
reason-over-the-weakest =
    .headline = Do not lift this. { first }{ no-more }
    .caution = The load is more than a part of this holds. Do not lift it from these legs.
reason-wooden-legs =
    .headline = Nobody can say what wooden legs hold, because that depends on the wood, its knots and its grain. Do not lift with them.
    .caution = The strength of wood is judged piece by piece: its kind, its knots, its grain, rot and cracks. Sawn timber has a grader's stamp for that, and a pole has none. So this page gives no strength. Thrust, ties and tipping hold for any legs. Use steel, or rent a tripod with a plate. The weight of the legs is counted as wet oak.
reason-over-the-gear =
    .headline = Do not lift this. The head, a tie or the stay is loaded with more than it holds.{ no-more }
    .caution = The head, a tie or the stay is loaded with more than it holds.
reason-head-lashed =
    .headline = { first } Nobody can say what a lashing holds, and it can be weaker. It is a figure to study, not a rating: legs without a plate have none.
    .caution = A lashing slips, stretches and is cut by the edges of the legs. Nobody can work out its strength. Use a bolt through the legs, or a head that is made for it.
reason-pin-upper-bound =
    .headline = { first }{ no-more } It is a figure to study, not a rating: legs without a plate have none.
    .caution = The bolt at the head is checked for shearing and bending, and the walls of tubes for being crushed. The holes weaken the legs. Lock the nut, so that the bolt cannot slip out. The load hangs from the bolt between the legs.
reason-head-by-its-mark =
    .headline = { first }{ no-more } It is a figure to study, not a rating: legs without a plate have none.
    .caution = The head is compared with its mark. It must be one that is made for legs like these.
reason-head-not-checked =
    .headline = { first } The head was not checked, and it can be weaker. It is a figure to study, not a rating: legs without a plate have none.
    .caution = What joins the legs at the head was not checked. A bolt bends there, a lashing slips, and legs that pass beside each other bend.
reason-unrated =
    .caution = These legs are unrated. Rated legs are designed by an engineer, tested under a proof load by somebody who is responsible for the test, and marked with their limit, their maker and their number.
reason-tie-the-feet =
    .headline = { first }{ no-more } Tie the feet together first. This is no rating.
    .caution = Tie the feet to each other, or let them into holes. A little oil or dust on the floor lets them slide.
reason-feet-must-hold =
    .caution = The holes or stakes must keep each foot from moving outward, and the feet of shear legs from moving backward as well. They were not checked.
reason-ties-not-checked =
    .headline = { first }{ no-more } The ties were not checked. This is no rating.
    .caution = Compare the pull in a tie with the rating of its weakest part.
reason-stay-not-checked =
    .headline = { first }{ no-more } The stay was not checked. This is no rating.
    .caution = Compare the pull in the stay with the rating of its weakest part.
reason-anchor-of-the-stay =
    .caution = The stay pulls its anchor up as well as forward. Without the stay the legs fall with the load. By an old rule of riggers the stay is made for half the load at least.
reason-feet-wide =
    .caution = The feet stand farther apart than a third of a leg, which an old military rule does not allow. The legs press hard against each other.
reason-leans-far =
    .caution = The head hangs out by more than a fifth of its height, which an old military rule does not allow. Stay and legs are pulled much harder the farther it leans.
reason-up-and-down-only =
    .caution = Use a tripod only to lift and lower. Do not pull the load sideways from it, and do not swing it. One leg would lift, and the tripod would fall.
reason-slender =
    .caution = The legs are very slender (length over least radius over 200, AISC 360-10 E2, from memory). A knock or a bend that is hard to see takes much of their strength.
reason-small-factor =
    .headline = { first }{ no-more } A factor under 3 is not for lifting. This is no rating.
    .caution = Common practice for lifting is a factor of 3. Smaller factors are for buildings, where loads do not jerk.
reason-not-counted =
    .caution = These formulas leave out bent legs, a soft or uneven floor, and a load that jerks.

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
    .formula = (outward push / downward push of a foot) / friction 0.2
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
step-check-head = Head
    .formula = { $head ->
        [pin] thrust of a leg / the least of 3/8 Fy A / √3 (two legs cut it), Fy S / arm and what crushes a tube's walls (1.25 Fy), with the factor
       *[other] what hangs from it / rating
    }
    .numbers = { used-of }
    .result = { $used }

## Why a result is absent

absent-no-stay = a tripod has no stay
absent-ties-not-checked = the ties were not checked
absent-stay-not-checked = the stay was not checked
absent-not-all-checked = head, ties or stay were not checked
absent-head-not-checked = the head was not checked
absent-head-lashed = nobody can say what a lashing holds
absent-wooden-legs = nobody can say what wooden legs carry

## Refusals

refused-legs-in-one-another = is so little that the legs would lie in one another. Measure from the middle of one to the middle of the next: at least { $least }.
refused-too-thick-for-the-leg = is more than half as thick as the leg (our own bound): beside so wide a hole the leg can break before the bolt crushes its wall, and that is not checked here. Measure both again.
refused-legs-lie-flat = is so much that the legs of { $leg } lie almost flat. Give less.

## The drawing

figure = The legs to scale, { $high } high, from the side and from the front. { $weakest ->
        [absent] Their weakest point is not known.
       *[other] The weakest point: { $weakest }.
    }
