# Worksheet lifting-lug.

title = How may a plate lug fail, and which way first?
summary = The ways in which a welded plate lug (padeye) can fail, and which sets the limit. A study aid: net section, tear-out, bearing, bending and weld.
story = The yard studies a drawing of a lug for an engine bearer before it asks an engineer.

## What is asked

input-load = Pull on the lug
    .help = The pull in its sling leg, and not the whole load.
input-thickness = Thickness of the plate
    .help = With calipers.
input-hole = Diameter of the hole
    .help = Across the hole.
input-pin = Diameter of the pin
    .help = Of the shackle's pin.
input-side_edge = Hole to side edge
    .help = From the edge of the hole, square to the pull.
input-end_edge = Hole to end
    .help = From the edge of the hole, along the pull.
input-end_shape = End of the plate
option-end_shape-round = Round about the hole
option-end_shape-square = Square
input-height = Middle of the hole over the weld
    .help = The arm that bends the foot.
input-weld_leg = Leg of the fillet weld
    .help = One run on each side of the plate.
input-weld_length = Length of each run
    .help = Of full size, ends not counted.
input-yield_strength = Yield strength of the plate
    .help = Plain structural plate: 36,000 psi.
input-tensile_strength = Tensile strength of the plate
    .help = Plain structural plate: 58,000 psi at least.
input-weld_strength = Strength of the weld metal
    .help = The first two figures of the rod's name, in ksi.
input-angle_in_plane = Pull leans in the plate's plane
    .help = From straight up.
input-angle_out_of_plane = Pull leans across the plate
    .help = From the plate's own plane.
input-design_factor = Design factor
    .help = 3 for common lifting; 2 only where loads are well known.

## What is found

result-capacity_estimate = Pull at which it would fail, with its factor (no rating)
result-governing = Fails first
result-net_tension = Tears across the hole (net section)
result-tear_out = Tears out at the end (splitting, double-plane shear)
result-bearing = Pin crushes the hole (pin bearing)
result-out_of_plane = Bends at the foot
result-weld = Weld

way-net_tension = the plate tearing across the hole
way-tear_out = the end tearing out
way-bearing = the pin crushing the hole
way-out_of_plane = the foot of the plate bending
way-weld = the weld

## The headline and the cautions

comes-first = By these formulas { $governing } is the first to fail, at { $capacity_estimate } with its factor. Your load is { $used } of that.

reason-over-the-first-way =
    .headline = Do not lift with this. { comes-first } That is too much.
    .caution = The load is more than the weakest way of failing allows. Do not use this lug.
reason-study-aid =
    .headline = { comes-first } This is a figure to study and not a rating. A home-made lug has no rating.
    .caution = This is a study aid and not a design. A qualified person designs a lifting lug and a qualified welder makes it. It is tested and marked before it lifts.
reason-formulas-from-memory =
    .caution = The pin-hole and weld formulas are from memory of ASME BTH-1 (2005 to 2020 editions) and were not read in its text.
reason-weak-across =
    .caution = A plate lug is weak across its plane. Turn it into line with the sling.
reason-loose-pin =
    .caution = The pin is loose in the hole and bears on a narrow line. The formulas are less sure there.
reason-small-factor =
    .caution = Use a factor under 3 only where the loads are well known and every lift is controlled.
reason-not-counted =
    .caution = The formulas leave out bad welds, laminated plate, cold steel, torch-cut corners and the part that the lug is welded to.

## The working

factor = { DIGITS($design_factor, digits: 3) }
allowed-ultimate = { OWN($ultimate) } / (1.2 × { factor })
allowed-by-stress = { OWN($pull) } × { OWN($allowed) } / { OWN($stress) }

step-tears = Tears across the hole (net-section tension)
    .formula = Cr × Fu / (1.2 Nd) × 2 t × effective side
    .numbers = { $loose } × { allowed-ultimate } × 2 × { OWN($thick, digits: 3) } × { OWN($side, digits: 3) }
    .result = { $net_tension }
step-splits = Splits at the end (single-plane fracture)
    .formula = Cr × Fu / (1.2 Nd) × [1.13 a + 0.92 be / (1 + be/Dh)] t
    .numbers = { $loose } × { allowed-ultimate } × { OWN($width, digits: 3) } × { OWN($thick, digits: 3) }
    .result = { $splits }
step-shears = Shears out at the end (double-plane shear)
    .formula = 0.70 × Fu / (1.2 Nd) × 2 × plane × t
    .numbers = 0.70 × { allowed-ultimate } × 2 × { OWN($plane, digits: 3) } × { OWN($thick, digits: 3) }
    .result = { $shears }
step-crushes = Pin crushes the hole (pin bearing)
    .formula = 1.25 × Fy / Nd × pin × t
    .numbers = 1.25 × { OWN($yields) } / { factor } × { OWN($bears, digits: 3) } × { OWN($thick, digits: 3) }
    .result = { $bearing }
step-bends = Bends at the foot
    .formula = your pull × allowed stress (Fy / Nd) / stress from pull and both bendings
    .numbers = { allowed-by-stress }
    .result = { $out_of_plane }
step-weld = Weld
    .formula = your pull × allowed stress (0.60 × weld metal / (1.2 Nd)) / stress on the throat
    .numbers = { allowed-by-stress }
    .result = { $weld }

## Refusals

refused-thicker-than-the-hole = does not go into the hole. Give a pin no thicker than the hole.
refused-over-the-tensile-strength = is over the tensile strength. Look the two up again.
refused-thicker-than-the-plate = is thicker than the plate, { $plate }: what is more lies beside it and holds nothing. Give no more than the plate.
refused-longer-than-the-plate = is longer than the plate is wide at the hole, { $wide }. Give no more than that: how wide a lug is at its foot is not asked.
refused-hole-in-the-weld = puts the hole into the weld. Give at least half the hole.

## The drawing

figure = Face of the lug to scale: { $wide } wide at the hole, { $thick } thick, pulled { PLACES($lean, places: 0) } off its line. First comes { $governing }.
