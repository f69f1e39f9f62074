# Worksheet hook-stress.

title = Where is a hook stressed most?
summary = The stress across the bend of a new, sound hook, from inside to outside (tension and compression), and the stress in which a weld bead would lie.
story = The yard asks which stress a tack weld inside the bend of its engine hook would be in when the 2,800 lb diesel hangs on it.

## What is asked

input-shape = Shape of the section
    .help = The cut across the bend, at the height of the load.
option-shape-trapezoid = Trapezoid, wide inside
option-shape-circle = Round bar
option-shape-rectangle = Rectangle
option-shape-tee = T, flange inside
input-diameter = Diameter of the bar
    .help = Only for a round bar.
input-depth = Depth, inside to outside
    .help = Measured along a line from the middle of the bend.
input-inner_width = Width at the inside
    .help = Where the load rests. For a T: the flange.
input-outer_width = Width at the outside
    .help = At the back of the hook. For a T: the web.
input-flange_depth = Depth of the flange
    .help = Only for a T.
input-inner_radius = Inner radius of the bend
    .help = Half the inside width of the bowl.
input-load = Load on the hook
    .help = All that hangs from the hook.
input-load_line = Where does the load hang?
    .help = A load nearer to the tip bends the hook more.
option-load_line-middle = Under the middle of the bend
option-load_line-measured = At a distance that I measured
input-arm = From the line of the load to the middle of the section
    .help = Measured level, to the middle of the cut across the bend.
input-bead_at = Put a weld bead in the picture
    .help = Shows the stress that it would be in.
option-bead_at-none = No bead
option-bead_at-inner = On the inside
option-bead_at-side = On the side
option-bead_at-outer = On the back

## What is found

result-inner_stress = Stress at the inside
result-outer_stress = Stress at the outside (minus: compression)
result-neutral_radius = Neutral radius of bending
result-centroid_radius = Radius of the section's middle
result-eccentricity = Eccentricity
result-section_area = Area of the section that counts
result-bending_moment = Bending moment
result-bead_stress = Stress under the bead, without the bead's own stress
result-times_plain_pull = Inside stress, as a multiple of a plain pull
result-flange_share = Share of the flange's overhang that works
result-flange_sideways = Sideways bending of the flange at the web

## What it means

opening = At { $load } the stress at the inside of a new, sound hook of this shape is { $inner_stress }: { $times_plain_pull } times that of a plain pull.
reason-a-stress =
    .headline = This is a stress, not a rating. It does not say what the hook may carry.
reason-bead =
    .headline = A weld bead there would be under { $stress } of { $way }. A welded hook has no rating and cannot be given one.
    .caution = A bead adds its own shrinkage stress, up to the strength of the steel, and a notch at its toe. Neither is in this figure. Remove a welded hook from service and cut it up.
pull = tension
squeeze = compression
reason-never-backwards =
    .caution = A hook is rated by its maker from tests, not from this stress. Never try to work out a rating from it.
reason-flange =
    .caution = The flange of a T bends sideways, so its edges carry less: only { $flange_share } of its overhang is counted. At the web there is also a sideways bending stress of { $flange_sideways }. Both come from a correction for thin flanges (Bleich) that is worked out for an even load.
reason-left-out =
    .caution = This leaves out the load's pressure on the bowl, a load on the tip, twist, wear, nicks and all heat. Each makes the stress worse.

## The working

step-flange = How much of the flange works
    .formula = Bleich: overhang² / (radius to the flange's middle × its depth)
    .numbers = flange { OWN($width) } wide, { OWN($deep) } deep: { $slenderness }
    .result = { $flange_share } of the overhang
step-flange-sideways = Sideways bending of the flange
    .formula = Bleich: factor × stress along the flange's middle
    .numbers = factor { $sideways }
    .result = { $flange_sideways }
step-middle = Middle of the section, from the center of the bend
    .formula = ∫ r dA / A
    .numbers = inner radius { OWN($inner) }
    .result = { OWN($centroid_radius) }
step-neutral-radius = Neutral radius
    .formula = A / ∫ dA / r
    .numbers = { OWN($section_area) }
    .result = { OWN($neutral_radius) }
step-eccentricity = Eccentricity e
    .formula = middle − neutral radius
    .numbers = { OWN($centroid_radius) } − { OWN($neutral_radius) }
    .result = { OWN($eccentricity) }
step-moment = Bending moment
    .formula = load × arm
    .numbers = { OWN($load) } × { OWN($arm_used) }
    .result = { OWN($bending_moment) }
step-inside = Stress at the inside
    .formula = { stress-formula }
    .numbers = { stress-numbers }
    .result = { $stress }
step-outside = Stress at the outside
    .formula = { stress-formula }
    .numbers = { stress-numbers }
    .result = { $stress }
stress-formula = load / A + moment (rn − r) / (A e r)
stress-numbers = { OWN($load) } / { OWN($section_area) } + { OWN($bending_moment) } × ({ OWN($neutral_radius) } − { OWN($radius) }) / ({ OWN($section_area) } × { OWN($eccentricity) } × { OWN($radius) })

## Why a result is absent

absent-no-bead = no bead placed
absent-no-flange = only a T has a flange

## Refusals

refused-flange-too-deep = is not less than the whole depth. Give a thinner flange.
refused-flange-too-thin = is too thin for so wide a flange: the correction for flanges is printed up to overhang² / (radius × depth) = { $most }. Give a deeper or a narrower flange.
refused-web-too-wide = is wider than the flange. Give the narrower web.
refused-bend-out-of-range = is out of range for this depth: the theory is used here from { $low } to { $high }.
refused-arm-and-middle = does not go with a load under the middle of the bend. Choose that you measured the distance, or leave it out.
refused-arm-crosses = crosses the section: the line of the load would run through the metal. Give the distance to the middle of the section, over { $to_edge }, or choose that it hangs under the middle of the bend.

## The drawing

figure-no-stress = no stress here
figure-load-side = load side
figure = The section of the hook with its load side on the left, and under it the stress along the bar: { $inside } at the inside, zero at the dotted line, { $outside } at the outside.{ $bead ->
        [absent] { "" }
       *[other] { " " }The bead lies where the stress is { $bead }, before its own notch and shrinkage.
    }
