# Worksheet moving-load.

title = What does my load weigh while it moves?
summary = The peak pull (dynamic load, impact allowance) when a hoist starts a load, stops it or takes up its slack at speed, compared with the rating.
story = The yard's electric hoist takes a diesel off its bed at its one speed. Beam, hoist rope and sling sink 3/8 in as the weight comes on.

## What is asked

input-load = Weight of the load
    .help = Use the high figure of its weight, with everything that hangs from the hook.
input-moved_by = What moves it
    .help = A crane counts as a motor. A hand winch or a come-along that slips by a tooth lets the load fall: use the worksheet for a drop.
option-moved_by-hand = A hand chain hoist or lever hoist
option-moved_by-power = A motor: hoist, winch, forklift
input-speed = Fastest speed of the hook
    .help = From the hoist's plate. If it has two speeds, give the faster one.
input-changes = How it starts and stops
    .help = If you leave it empty, it counts as sudden.
option-changes-suddenly = At once, or its slack goes at speed
option-changes-evenly = Evenly, after its slack is crept out
input-distance = Shortest distance in which it starts or stops
    .help = Measured at the hook, with a load on it. Mark where the stop is called, and where the hook stands.
input-give = How far the hook sinks when the weight comes on
    .help = Hoist, rope, sling and what they hang from, together. Measure it from the floor. If you do not know it, leave it empty.
input-diameter = Thickness of the rope, or of the wire of a link
input-length = Length of the rope or chain that pulls
    .help = What gives beside it is not counted.
input-rating = Rating of the weakest part
    .help = Sling, shackle, hook or hoist, from a tag or mark that you can read.

## What is found

result-peak_force = Peak pull, at most
result-factor = Times its weight
result-use_percent = Share of the rating
result-rest_force = Pull at rest
result-steady_force = Pull while it gains or loses speed, without the jerk
result-least_force = Least pull, as it bounces back
result-acceleration = Acceleration, as a part of gravity
result-rest_stretch = Give of the rigging at rest
result-printed_factor = Printed for such a hoist, at least: times its weight
result-class_low = By the softest hoisting class of EN 13001-2 (from memory)
result-class_high = By the stiffest class (from memory)

## The headline and the cautions

it-pulls = While it moves, the load pulls up to { DIGITS($factor, digits: 3) } times its weight: { $peak_force }.

reason-hoist-not-said =
    .headline = You have not said what moves it, so nobody can tell how hard it pulls.
    .caution = Say whether a hand chain hoist moves it, or anything with a motor or an engine.
reason-speed-not-known =
    .headline = The speed of the hook is not known, so nobody can tell how hard it pulls.
    .caution = Read the speed off the hoist's plate, or measure how far the hook runs in a minute.
reason-give-not-known =
    .headline = A sudden stop has no upper limit if nobody knows how far the rigging gives.
    .caution = Measure how far the hook sinks when the weight comes on, or give thickness and length of the chain or rope. A web sling needs the measurement.
reason-over-rating =
    .headline = { it-pulls } That is { $use_percent } of the rating. Too much.
    .caution = Do not lift like this. Use heavier rigging, a slower hoist, or creep the slack out and stop gently.
reason-no-rating =
    .headline = { it-pulls } Nobody has said what the weakest part is rated for.
    .caution = Give the lowest rating of sling, shackle, hook and hoist.
reason-inside-rating =
    .headline = { it-pulls } That is { $use_percent } of the rating.
reason-may-go-slack =
    .headline = { it-pulls } As it bounces back the rigging may go slack.
    .caution = When the load bounces back, the sling may go slack. A hook with no latch can come off. Creep the slack out, and use the slow speed.
reason-taken-as-sudden =
    .headline = { it-pulls } That is { $use_percent } of the rating, for a stop at once.
    .caution = This is for a stop at once, or for slack taken up at this speed. The rating has to hold the whole peak. There is no extra allowance for a jerk.
reason-give-reckoned =
    .caution = The give was worked out: chain as two bars of solid steel, rope by the stiffest figure printed. Beam and hoist give more, which softens the jerk. Measure how far the hook sinks, if you can.
reason-hand-adds-little =
    .caution = A hand chain hoist adds hardly anything if you pull evenly. Minnesota's rules ask for no allowance (1305.1607). The load still counts 1.10 times, as for any lift on land (0027/ND).
reason-wait-till-it-hangs-still =
    .caution = Each start and each stop can add to a bounce that is still there. Wait until the load hangs still. Do not jog the hoist, and do not go straight from up to down.
reason-a-fall-is-worse =
    .caution = If anything slips and the load falls, even an inch, it pulls far more than this. Use the worksheet for a drop.
reason-support-feels-it =
    .caution = Beam, frame and anchors feel the same peak, with the hoist's own weight on top.

## The working

step-rest = Pull at rest
    .formula = weight of the load
    .numbers = { OWN($load) }
    .result = { $rest_force }
step-steady = While it gains or loses speed
    .formula = weight × (1 + a/g), a = speed² / (2 × distance)
    .numbers = { OWN($load) }, { OWN($speed) } in { OWN($distance) }
    .result = { $steady_force }
step-give = Give of the rigging at rest
    .formula = weight × length / (stiffest modulus × area)
    .numbers = { OWN($load) }, { OWN($length) } of { OWN($diameter) }
    .result = { $rest_stretch }
step-jerk-even = What it adds at most
    .formula = 2 × weight × a/g: a spring goes twice as far; no more than at once
    .numbers = 2 × { OWN($rest_force) } × { $acceleration }
    .result = { $jerk }
step-jerk-sudden = What it adds at most
    .formula = weight × speed / √(gravity × give)
    .numbers = { OWN($rest_force) } × { OWN($speed) } / √(g × { OWN($rest_stretch) })
    .result = { $jerk }
step-peak = Peak pull
    .formula = pull at rest + that; no less than what is printed
    .numbers = { OWN($rest_force) } + { OWN($jerk) }; { $printed_factor } × { OWN($rest_force) }
    .result = { $peak_force }

## Why a result is absent

absent-hoist-not-said = not known: say what moves it
absent-speed-not-known = not known: give the speed
absent-give-not-known = not known: give how far the rigging gives
absent-by-hand = not needed by hand
absent-not-even = none: it changes at once
absent-no-rating-counts = no rating that counts here

## Refusals

refused-less-than-steel = is less than such a chain or rope gives at the very least: { $least }. Measure again, or leave out thickness and length.
refused-too-thin-for-its-rating = is too thin for a chain that is rated { $rating } (our own bound, no source). Measure the wire of one link again.

## The drawing

figure = Bars to scale: { $rest } at rest and { $peak } at the peak, against the rating of { $line }.
figure-unrated = Bars to scale: { $rest } at rest and { $peak } at the peak.
figure-unknown = One bar: { $rest } at rest. The peak is not known.
figure-rest = at rest { $pull }
figure-steady = gaining speed { $pull }
figure-peak = at the peak { $pull }
figure-rated = rated { $pull }
figure-at-rest = its weight { $pull }
