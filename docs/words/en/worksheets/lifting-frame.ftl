# Worksheet lifting-frame.

title = Which part limits my own lifting frame?
summary = Beam, posts, feet, wheels and joints of a gantry, an A-frame or a wall beam, each compared with what it holds. A study aid.
story = The yard looks at the beam on two A-frames from which it means to hang an old diesel.

## What is asked

input-load = Load
    .help = Everything under the hook.
input-hoist_weight = Hoist and trolley
    .help = Their weight, with the chain.
input-side_pull = The hoist pulls off plumb by
    .help = Nobody pulls quite plumb: 3° at least (our own bound, no source).
input-kind = The beam is held by
option-kind-a-frames = two A-frames
option-kind-gantry = two posts on feet or casters (gantry)
option-kind-portal = two posts anchored in the floor
option-kind-walls = two walls, or a ceiling
option-kind-bracket = one wall, the other end free
input-span = Span
    .help = Between the supports, or from the wall to the free end.
input-position = Load from the left support
    .help = If you leave it empty, a trolley can carry it anywhere, and the worst place counts.
input-hung_from = It hangs
option-hung_from-trolley = from a trolley on the lower flange
option-hung_from-below = from a clamp or an eye below the beam
option-hung_from-on-top = from a sling over the beam, or I do not know
input-section = Section of the beam
option-section-i-beam = I-beam
option-section-rectangle = Flat bar on edge
option-section-box = Square or rectangular tube
option-section-tube = Pipe or round tube
option-section-known = From a section book
input-depth = Depth
    .help = Upright, over all.
input-width = Width
    .help = Level, over all.
input-diameter = Outside diameter
    .help = Over all.
input-wall = Wall
    .help = With calipers.
input-flange_width = Flange width
    .help = Across the top.
input-web_thickness = Web thickness
    .help = Thickness of the vertical part, with calipers.
input-flange_thickness = Flange thickness
    .help = Where the wheels run. On a sloping flange, measure there too.
input-twist_constant = Torsion constant
    .help = J of a rolled beam, from the section book. If you leave it empty, it is worked out from the sizes alone, without the fillets, which gives less.
input-second_moment = Second moment of area
    .help = I about the level axis, from the section book.
input-modulus_top = Section modulus of the top
    .help = I over the distance to the top. In a T the two sides differ.
input-modulus_bottom = Section modulus of the bottom
    .help = I over the distance to the bottom.
input-own_weight = Weight of the beam by its length
    .help = From the section book.
input-ends_hold = At its supports the beam is
option-ends_hold-held = held from twisting: both flanges bolted or welded, or a stiffener plate
option-ends_hold-only-resting = only resting there, or I do not know
input-held_every = Held from twisting every
    .help = If you leave it empty, it is held at its supports only. A trolley or the load itself does not hold it.
input-yield_strength = Yield strength of the steel
    .help = Of the weaker of beam and posts. Plain structural steel: 36,000 psi (ASTM A36), if you know that it is that.
input-design_factor = Design factor
    .help = 3 for lifting by common practice, no source; 1.67 is the least for buildings.
input-height = Floor to beam
    .help = To the beam's middle.
input-joint = Along the beam, its posts are joined
option-joint-stiff = stiffly: welded all round, or with knee braces
option-joint-loose = loosely: one bolt, a hook, a notch, or I do not know
input-post_section = Section of a post or leg
option-post_section-square-tube = Square tube
option-post_section-pipe = Pipe or round tube
option-post_section-book = From a section book
input-post_width = Width of the post
    .help = Side of the square, or outside diameter.
input-post_wall = Wall of the post
    .help = With calipers.
input-post_area = Area of the post
    .help = From the section book.
input-post_radius = Least radius of gyration
    .help = The r about the weakest axis.
input-post_modulus = Least section modulus of the post
    .help = About the weakest axis.
input-feet_apart = Feet apart, square to the beam
    .help = Between the outer wheels or feet of one end. With casters, the narrowest they can swing to.
input-feet_tied = The feet of an A-frame are
option-feet_tied-tied = tied to each other by a bar or a chain
option-feet_tied-loose = not tied, or I do not know
input-stands_on = The frame stands on
option-stands_on-feet = feet
option-stands_on-wheels = casters marked with a rating
option-stands_on-wheels-unmarked = casters without a mark, or I do not know
input-wheel_rating = Rating of one caster
    .help = As marked on it.
input-frame_weight = Weight of the whole frame
    .help = Beam, posts and feet. Against tipping no more than twice what beam and legs weigh is counted (our own bound: more is a slip of the scale, or something that can be taken off).
input-fastened_by = What fastens it
option-fastened_by-not-checked = I do not check it here
option-fastened_by-bolts = bolts
option-fastened_by-weld = a fillet weld
option-fastened_by-anchors = anchors in concrete
input-bolt_grade = Kind of bolts
option-bolt_grade-a307 = plain, or I do not know (ASTM A307)
option-bolt_grade-a325 = hardened, head marked A325
input-bolt_diameter = Diameter of a bolt
    .help = Over its thread.
input-fastener_count = How many share the pull
    .help = Those on the pulled side: at one corner of beam and post, at one foot, or in the upper row of a wall plate. Between walls, those at one end.
input-weld_leg = Leg of the fillet weld
    .help = The smaller of its two legs.
input-weld_length = Length of the weld
    .help = In all, at one end of the beam, of full size.
input-weld_strength = Strength of the weld metal
    .help = The first two figures of the rod's name, in ksi.
input-embedment = Depth of the anchors
    .help = From the concrete's face to their working end.
input-concrete_strength = Strength of the concrete
    .help = 3,000 psi is a usual floor, if you know that it is that.
input-plate_height = From the pulled to the pressed side of the joint
    .help = On a wall from the upper to the lower bolts or weld. At the corner of beam and post, and on a floor, from the bolts or the weld on one side to those on the other.

## What is found

result-weakest = Weakest point
result-weakest_share = Part used of what the weakest point holds
result-not_more_than = Not more than this load here (no rating)
result-checks = Each check
column-checks-check = Check
column-checks-asked = Load on it
column-checks-takes = What it holds, factor counted
column-checks-used = Used
row-checks = { $check }: { $used } used; { $state ->
        [fail] too much
       *[pass] within what it holds
    }
result-deflection = It sags
result-span_over_deflection = Span over sag
result-moment = Hardest bending
result-end_reaction = Load on the more heavily loaded end of the beam
result-foot_thrust = Outward push of a foot
result-tips_at = The frame tips when the hoist pulls off plumb by
result-beam_weight = Weight of the beam itself

check-bends = the beam bends to its yield
check-rolls = the beam rolls over sideways
check-sideways = the beam bends sideways as well
check-shears = the beam shears beside an end
check-flange = its lower flange bends under the trolley
check-web = its web is pulled off the flange
check-posts = a post bends or buckles
check-feet = the feet slide apart
check-tips = the frame tips over
check-wheels = a caster is overloaded
check-joint = the joint breaks

## The headline and the cautions

first = { $weakest_share ->
        [absent] Of the parts that were checked, this is the weakest: { $weakest }.
       *[other] The weakest point: { $weakest }. The load uses { $weakest_share } of what that allows.
    }
no-more = { $not_more_than ->
        [absent] { "" }
       *[other] { " " }By these formulas the frame holds not more than { $not_more_than } here, and perhaps less.
    }

reason-folds =
    .headline = Do not lift from this. Loose joints let the frame fold along its beam. Brace it, or weld the joints all round.
    .caution = Nothing keeps this frame from folding along its beam.
reason-cannot-tell =
    .headline = Nobody can say what this frame holds: { $why }. Do not lift from it.
    .caution = Not every part could be checked: { $why }.
reason-wheels-unmarked =
    .headline = Nobody can say what casters without a mark hold. Do not lift from this.
    .caution = Do not lift from a frame on casters without a rating.
reason-over-the-weakest =
    .headline = Do not lift this. { first }{ no-more }
    .caution = The load is more than a part of this frame holds. Do not lift it from this frame.
reason-unrated =
    .headline = { first }{ no-more } It is a figure to study, not a rating: a frame without a plate has none.
    .caution = This frame is unrated. A rated frame is designed by an engineer, tested under a proof load by somebody who is responsible for the test, and marked with its limit, its maker and its number.
reason-joint-not-checked =
    .headline = { first } The joint was not checked, and it can be weaker, so neither a part used nor a greatest load is given. This is no rating.
    .caution = What fastens the beam or the posts was not checked. Many frames fail there.
reason-joint-upper-bound =
    .caution = The joint's figure is an upper bound: all its bolts, anchors or welds are taken to pull evenly. The plate, its edges, prying and a bad weld make it weaker.
reason-the-wall-not-checked =
    .caution = The wall, ceiling or floor that carries this was not checked. A roof beam was made to hold a roof.
reason-tips-along =
    .caution = Tipping is checked square to the beam, and what holds the frame must be 1.5 times what tips it (common practice, no source). A pull along the beam with the hoist at its end tips the frame as well.
reason-top-and-foot =
    .caution = Posts in the floor are fastened twice: to the beam and to the floor. One of the two is checked here. Choose the other as well, and go by the lower answer.
reason-sole-not-checked =
    .caution = The bar under each post, from one foot or caster to the other, is not checked here. It bends as a beam does under the post in its middle, with nearly all of the load where the hoist is at that end.
reason-tie-the-feet =
    .headline = { first }{ no-more } Tie the feet of the A-frames together first. This is no rating.
    .caution = Tie the feet of an A-frame to each other. A little oil or dust on the floor lets them slide. Friction is counted as 0.2, our own bound under the printed figures for dry steel.
reason-never-roll-loaded =
    .caution = Do not roll the frame with a load on it. A caster that drops into a crack tips it.
reason-limp =
    .headline = { first }{ no-more } The beam is too flexible. This is no rating.
    .caution = The beam is too flexible, with its span under 450 times its sag (ANSI MH27.1, from memory): a trolley rolls by itself.
reason-weight-misfits =
    .headline = { first }{ no-more } The frame's weight does not fit its sizes. This is no rating.
    .caution = By their sizes beam and legs weigh { $parts }, and the whole frame should weigh that and up to twice as much. Look at both again. Against tipping the smaller weight is counted, on the wheels the larger.
reason-small-factor =
    .headline = { first }{ no-more } A factor under 3 is not for lifting. This is no rating.
    .caution = Common practice for lifting is a factor of 3. Smaller factors are for buildings, where loads do not jerk.
reason-four-wheels =
    .caution = The lower flange is checked for a trolley with four wheels. Within a flange's width of an end of the beam it counts as bent twice as hard, because half of the strip that bends is missing there. Between two supports, set stops that keep the trolley off the ends. Two wheels, or a clamp, press harder on one place.
reason-starting-adds =
    .caution = Load and hoist are counted 1.10 times, since starting and stopping add to them. A hand chain hoist adds less, and rigging that slips adds more.
reason-not-counted =
    .caution = These formulas leave out rust, holes, old bends, bad welds, a web crushed over its support, a soft floor, and a load that jerks.

## The working

used-of = { OWN($asked) } / { OWN($takes) }
step-hangs = Hangs from the beam
    .formula = 1.10 × (load + hoist) × gravity
    .numbers = 1.10 × ({ OWN($load) } + { OWN($hoist_weight) })
    .result = { $hangs }
step-bending = Hardest bending
    .formula = { $kind ->
        [bracket] hangs × arm + w L² / 2
       *[other] hangs × a b / L + w L² / 8
    }
    .numbers = { OWN($hangs) } × { OWN($arm) }, and { OWN($own) } over { OWN($span) }
    .result = { $moment }
step-bends = Beam bends
    .formula = bending / (Fy S / factor)
    .numbers = { used-of }
    .result = { $used }
step-rolls = Beam rolls over sideways
    .formula = bending / (Mn / factor), AISC 360-22 F2, F3 or F11, Cb = 1
    .numbers = { used-of }
    .result = { $used }
step-sideways = Beam bends both ways
    .formula = bending part + level pull × arm / (Fy S sideways / factor), AISC 360-22 H1-1b
    .numbers = sideways { used-of }, and the bending part
    .result = { $used }
step-shears = Beam shears
    .formula = end force / (Fy / √3 × shear area / factor)
    .numbers = { used-of }
    .result = { $used }
step-flange = Lower flange bends
    .formula = √(s² + s q + q²) / (Fy / factor), s = bending / S, q = 0.75 P / tf², twice that at an end of the beam
    .numbers = { used-of }
    .result = { $used }
step-web = Web is pulled off the flange
    .formula = P / (7 tf tw) / (Fy / factor)
    .numbers = { used-of }
    .result = { $used }
step-posts = Post bends or buckles
    .formula = thrust and bending, AISC 360-22 E3 and H1-1, with K of 2.0 or more; the hoist's level pull and the sagging beam bend it
    .numbers = thrust { used-of }, and its bending
    .result = { $used }
step-tips = Frame tips
    .formula = (load + hoist) × tan p × height / ((load + hoist + half the frame) × feet apart / 2 / 1.5)
    .numbers = { used-of }
    .result = { $used }
step-feet = Feet slide
    .formula = foot thrust / (0.2 × what presses the foot down)
    .numbers = { used-of }
    .result = { $used }
step-wheels = Caster
    .formula = (half of the end, and side pull × height / feet apart) / its rating
    .numbers = { used-of }
    .result = { $used }
step-joint = Joint
    .formula = { $kind ->
        [walls] force on it / (its strength / factor)
        [bracket] √(end² + (bending / arm)²) / (its strength / factor); a weld is pulled along half of its length
       *[other] √(end² + (couple of its corner or foot / arm)²) / (its strength / factor); a weld is pulled along half of its length
    }
    .numbers = { used-of }
    .result = { $used }
step-most = Not more than
    .formula = the load at which the first check reaches 100%
    .numbers = factor { $factor } on yielding and buckling
    .result = { $not_more_than }

## Why a result is absent

absent-past-yield = the beam is past its yield
absent-past-small-sag = it sags by more than a tenth of its span
absent-ends-not-held = at its supports nothing is said to hold the beam from twisting
absent-section-not-known = a section from a book is not checked for rolling over sideways
absent-deep-box = a tube this deep and narrow, more than twice as deep as wide (our own bound), is not checked for rolling over sideways
absent-thin-plates = a flange, a web or a wall of the beam is so thin that it buckles by itself
absent-thin-posts = the wall of the posts is so thin that it buckles by itself
absent-joint-not-checked = how the beam is fastened is not checked here
absent-load-on-a-cantilever = a load on top of a wall beam is not checked for rolling over sideways
absent-no-leaning-legs = there are no leaning legs
absent-held-by-the-building = the building holds it

## Refusals

refused-size-missing = is missing here. Give it as measured, or as the book or the mark says.
refused-moduli-miss-the-depth = and the modulus of the bottom make a depth of { $made } with the second moment, not { $depth }. Look at their units again.
refused-twist-misses-the-sizes = does not fit the sizes: flanges and web alone make { $plates }, and fillets add half of that at most. Look at its unit and at the sizes again, or leave it empty.
refused-wall-too-thick = is more than half the tube. Measure it again.
refused-web-too-wide = is half the flange or more: that is no I-beam. Measure it again.
refused-lies-on-its-side = is much more than the depth. An I-beam stands upright here: its web is upright, its flanges lie level. Look whether the two are exchanged.
refused-book-contradicts = does not fit the area and the radius: no rolled section has these three. Look at their units again, and take all three about the same axis.
refused-flange-too-thick = is half the depth or more: that is no I-beam. Measure it again.
refused-off-the-span = is over a support or beyond it. Give a place between the supports.
refused-over-the-span = is more than the span. Give the distance between the points that hold the beam.
refused-feet-too-wide = is more than twice the height. Give no more than that.
refused-trolley-needs-a-flange = needs an I-beam, because a trolley runs on its lower flange. Choose another way, or an I-beam.
refused-wheels-roll-apart = does not go with casters: the feet of an A-frame on casters roll apart. Tie the feet, or choose feet without casters.
refused-stands-free = is for posts, walls and ceilings, and this frame stands free. Choose bolts, a weld or no check.

## The drawing

figure = The frame to scale over { $span }. { $weakest ->
        [absent] Its weakest point is not known.
       *[other] The weakest point is highlighted: { $weakest }.
    }
