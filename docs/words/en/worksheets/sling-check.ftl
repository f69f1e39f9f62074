# Worksheet sling-check.

title = Is this wire rope or web sling still fit?
summary = Checks broken wires, wear, kinks, heat, cuts, stitching and tag against the published limits (removal criteria).
story = The yard inspects the wire rope sling with which it steps masts, as it does each quarter.

## What is asked

input-kind = Kind
option-kind-wire-rope = Wire rope
option-kind-web = Web or round sling
input-broken_in_lay = Broken wires in the worst lay
    .help = One lay is the length in which one strand goes once round the rope.
input-broken_in_strand = Of these, in the worst strand
input-broken_at_fitting = Broken wires at an end fitting
input-broken_in_eight_diameters = Broken wires in eight rope diameters
    .help = In the worst stretch of rope eight times as long as the rope is thick. None: 0.
input-wires_in_rope = Wires in the whole rope
    .help = 6x19 classes have 114 or so, 6x37 classes 216 or so.
input-outer_wire_wear = Outer wires worn by
    .help = Share of one wire's own diameter that is worn flat.
input-diameter_new = Rope diameter when new
input-diameter_now = Rope diameter now
    .help = Over the crowns, at the thinnest place.
input-core = Core
option-core-fibre = Fiber, or not known
option-core-steel = Steel
input-shape_damage = Any kink, crushed or flat place, or birdcage?
input-corrosion = Any rust pits or stiff, dry places?
input-cut_share = Deepest cut or tear, share of the width
    .help = None: 0. Snags and punctures count.
input-chemical = Any acid or caustic burn, stiff or faded web?
input-stitch_damage = Any load stitch broken or worn?
input-material = Material
option-material-nylon-or-polyester = Nylon or polyester
option-material-polypropylene = Polypropylene, or not known
input-heat = Any heat mark, melted or glazed place?
input-fitting_damage = Any end fitting cracked, bent or worn?
input-tag_readable = Can you read the tag?
input-altered = Any knot, mend, clip, weld or change?
input-hottest = Highest temperature it has been at
    .help = The hottest place or load that it has touched. If it was only in the open air, give 120 °F (50 °C).
input-rating = Rating on its tag

## What is found

result-worst_share = Criteria passed
result-diameter_loss = Wear of the diameter
result-rating_if_sound = Rating on its tag, if sound

## What it is judged by

part-sling = sling
criterion-broken-in-lay = Broken wires in one lay
    .listed = broken wires in one lay
    .look-at = broken wires in a lay
criterion-broken-in-strand = Broken wires in one strand of a lay
    .listed = broken wires in one strand of a lay
    .look-at = broken wires in a strand
criterion-broken-at-fitting = Broken wires at an end fitting
    .listed = broken wires at an end fitting
    .look-at = broken wires at the fittings
criterion-outer-wires-worn = Outer wires worn
    .listed = outer wires worn
    .look-at = the wear of the outer wires
criterion-shape = Kink, crush or birdcage
    .listed = kink, crush or birdcage
    .look-at = any kink or crush
    .limit = none
criterion-heat-damage = Heat damage
    .listed = heat damage
    .look-at = any heat mark
    .limit = none
criterion-corrosion = Corrosion or pitting
    .listed = corrosion or pitting
    .look-at = any rust
    .limit = none
criterion-end-fitting = End fitting cracked, bent or worn
    .listed = end fitting cracked, bent or worn
    .look-at = the end fittings
    .limit = none
criterion-broken-in-eight-diameters = Broken wires in eight diameters
    .listed = broken wires in eight diameters
    .look-at = broken wires in eight diameters
criterion-diameter-lost = Diameter lost
    .listed = diameter lost
    .look-at = the diameter
criterion-cut = Cut, tear, snag or puncture
    .listed = cut, tear, snag or puncture
    .look-at = any cut or tear
no-cut-at-all = no cut at all
criterion-melted = Melted, charred or glazed
    .listed = melted, charred or glazed
    .look-at = any heat mark
    .limit = none
criterion-chemical = Acid or caustic burn, stiff or faded web
    .listed = acid or caustic burn, stiff or faded web
    .look-at = any acid burn
    .limit = none
criterion-stitching = Load stitching broken or worn
    .listed = load stitching broken or worn
    .look-at = the stitching
    .limit = none
criterion-web-fitting = Fitting bent, cracked or worn
    .listed = fitting bent, cracked or worn
    .look-at = the fittings
    .limit = none
criterion-too-hot = Was hotter than allowed
    .listed = was hotter than allowed
    .look-at = how hot it has been
criterion-no-tag = No readable tag
    .listed = no readable tag
    .look-at = the tag
    .limit = a tag you can read
criterion-altered = Knotted, mended, welded or changed
    .listed = knotted, mended, welded or changed
    .look-at = any knot, mend or change
    .limit = none

criteria-passed = { $passed } of { $all }
absent-not-said = not said
absent-no-tag-rating-given = no tag rating given

reason-never-bare-handed =
    .caution = Never run a bare hand along a wire rope, because broken wires cut like hooks. Wear leather gloves and draw a rag along the rope: it catches on broken wires.
reason-broken-inside =
    .caution = You do not see wires that are broken inside. Bend the rope by hand in the worst lay and look between the strands.
reason-sunlight =
    .caution = Sunlight weakens webbing, and often you cannot see it. Remove a sling that is stiff, pale or powdery from service.
reason-protect-from-edges =
    .caution = Protect webbing from every edge. Under load a small cut can run through the whole sling at once.

## Refusals

refused-diameter-now-thicker-than-new = is thicker than that rope when new. Measure over the crowns; a swollen place is a birdcage.
refused-more-in-strand-than-in-lay = is more than in the whole lay. Count the worst strand of that lay.
refused-fewer-than-in-a-lay = is fewer than in the worst lay, which is shorter. Count the worst eight diameters; they hold that lay.
refused-colder-than-allowed = is colder than { $coldest }, below which only the maker can say whether such a sling may be used. Give the highest temperature that it gets.
refused-over-what-the-rope-breaks-at = is more than the breaking load of such a rope, about { $breaks }. Read the tag again, and measure the rope again.
refused-more-than-all-wires = is more than all the wires of the rope.

## The drawing

label-lay = one lay: one strand once round
label-diameter = diameter
label-bearing = bearing
label-stitching = load stitching
label-tag = tag
label-edges = edges: cuts
figure-rope = A six-strand rope from the side. One lay is the length in which one strand goes once round: count broken wires in the worst lay. Set the caliper over the crowns of the strands, not in the valleys.{ $diameter ->
        [absent] { "" }
       *[other] { " " }Diameter { DIGITS($diameter, digits: 4) }.
    }
figure-web = A web sling laid flat. Look at both faces and edges for cuts and melted places, at every row of load stitching, at the bearing of each eye, and read the tag.
