# Worksheet lifting-lug.

title = How can a plate lug fail, and what limits it?
summary = The ways in which a welded plate lug (padeye) can fail, and which of them sets the limit: net section, tear-out, bearing, foot, weld, pin and wall. A study aid.
story = The yard studies the drawing of a lug for an engine bearer before it asks an engineer.

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
    .help = From the edge of the hole, along the foot.
input-end_edge = Hole to end
    .help = From the edge of the hole, away from the foot.
input-end_shape = End of the plate
option-end_shape-round = Round about the hole
option-end_shape-square = Square
input-height = Middle of the hole over the weld
    .help = The arm that bends the foot.
input-weld_leg = Leg of the fillet weld
    .help = The smaller of its two legs.
input-weld_length = Length of each run
    .help = Along the plate, of full size, ends not counted.
input-weld_runs = The weld runs
option-weld_runs-two = along each side of the plate
option-weld_runs-around = all round the plate, of the same leg
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
input-pin_is = The pin is
option-pin_is-not-checked = not checked here
option-pin_is-marked = of a marked shackle that is rated for this pull
option-pin_is-own = my own pin or bolt
input-jaw = Thickness of one jaw
    .help = Of each of the two plates that hold the pin.
input-between_jaws = Clear between the jaws
    .help = With its play. Washers that fill the play shorten nothing unless they are fixed.
input-pin_yield = Yield strength of the pin
    .help = Of the pin's own steel. A plain bar has 36,000 psi, if you know that it is that.
input-welded_to = The lug is welded to
option-welded_to-not-checked = something that I do not check here
option-welded_to-wall = a flat wall or plate, held by ribs or corners on both sides
input-wall_thickness = Thickness of the wall
    .help = Under the lug, where it is thinnest.
input-wall_span = Between the ribs or corners
    .help = Square to the lug, from one to the next.
input-wall_yield = Yield strength of the wall
    .help = Plain structural plate: 36,000 psi.
input-own_plate = My rule allows in the plate, in tension or bending
    .help = All four stresses of your own rule, or none. The smaller of rule and formula counts.
input-own_shear = My rule allows in the plate, in shear
    .help = On the two planes before the pin.
input-own_bearing = My rule allows under the pin
    .help = On pin times thickness.
input-own_weld = My rule allows in the weld
    .help = On the throat.

## What is found

result-capacity_estimate = Limit of the lug by these formulas, factor counted (no rating)
result-governing = What sets the limit
result-net_tension = Tears across the hole (net section)
result-tear_out = Tears out at the end (splitting, double-plane shear)
result-bearing = Pin crushes the hole (pin bearing)
result-gross_section = Stretches over its whole width (gross section)
result-out_of_plane = Bends at the foot
result-foot_shear = Shears at the foot
result-weld = Weld
result-pin_holds = Pin bends or shears
result-wall_holds = Wall folds or shears
result-own_allows = By the stresses of your own rule
result-with_pin_and_wall = Limit with pin and wall, factor counted (no rating)

way-net_tension = the plate tearing across the hole
way-tear_out = the end tearing out
way-bearing = the pin crushing the hole
way-gross_section = the plate stretching over its whole width
way-out_of_plane = the foot of the plate bending
way-foot_shear = the foot of the plate shearing
way-weld = the weld
way-own-tension = the plate beside the hole, by your own rule
way-own-shear = the end tearing out, by your own rule
way-own-bearing = the pin in the hole, by your own rule
way-own-foot = the foot of the plate, by your own rule
way-own-weld = the weld, by your own rule
way-pin = the pin
way-wall = the wall that the lug is welded to

## The headline and the cautions

comes-first = By these formulas the limit is { $first }, with the design factor counted, and it is set by { $governing }. Your load is { $used } of that.

reason-over-the-first-way =
    .headline = Do not lift with this. { comes-first } That is too much.
    .caution = The load is over the limit of the lug. Do not use this lug.
reason-study-aid =
    .headline = { comes-first } This is a figure to study and not a rating. A home-made lug has no rating.
    .caution = This is a study aid and not a design. A qualified person designs a lifting lug and a qualified welder makes it. It is tested and marked before it lifts.
reason-formulas-from-memory =
    .caution = The pin-hole and weld formulas are from memory of ASME BTH-1 (2005 to 2020 editions) and were not read in its text.
reason-weak-across =
    .caution = A plate lug is weak across its plane. Turn it into line with the sling.
reason-hard-plate =
    .caution = A plate with a yield over 65,000 psi is hardened or tempered. Beside a weld it softens or cracks, and these formulas know nothing of that.
reason-loose-pin =
    .caution = The pin is loose in the hole and bears on a narrow line. The formulas are less sure there.
reason-dishes =
    .caution = The plate is wide and thin beside the hole, so that it dishes (bends out of its plane). Only four thicknesses on each side of the hole are counted.
reason-thin-for-the-pin =
    .caution = The plate is thinner than half its pin (a shop rule, from memory). Use a thicker plate, and fill the jaws so that the pull stays in its middle.
reason-weld-too-small =
    .caution = The weld is small for this plate. It cools so fast that it can crack. The least leg here is { $least } (AISC 360-10, Table J2.4).
reason-pin-not-checked =
    .headline = { comes-first } The pin was not checked, and it can be weaker. This is no rating.
    .caution = The pin was not checked. Use the pin of a marked shackle, and compare its rating with this pull.
reason-pin-of-your-own =
    .caution = A pin of your own has no mark and no rating. A bolt whose thread lies in a jaw shears sooner than this says, and a bolt that works loose falls out.
reason-pin-by-its-mark =
    .caution = Go by the mark on the shackle for the shackle and its pin. They are not worked out here.
reason-wall-not-checked =
    .headline = { comes-first } What the lug is welded to was not checked, and it can be weaker. This is no rating.
    .caution = What the lug is welded to was not checked. A thin wall folds or tears out round the foot long before the lug fails.
reason-wall-upper-bound =
    .caution = The figure of the wall is an upper bound. It is for a flat, sound wall with the lug midway between what holds it, and for steel that does not split in layers under the weld.
reason-small-factor =
    .caution = Use a factor under 3 only where the loads are well known and every lift is controlled.
reason-not-counted =
    .caution = The formulas leave out bad welds, laminated plate, cold steel, torch-cut corners, and a pull that is repeated many times (fatigue).

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
step-gross = Stretches over its whole width (gross section)
    .formula = Fy / Nd × width × t
    .numbers = { OWN($yields) } / { factor } × { OWN($wide, digits: 3) } × { OWN($thick, digits: 3) }
    .result = { $gross_section }
step-bends = Bends at the foot
    .formula = your pull × allowed stress (Fy / Nd) / stress from pull and both bendings
    .numbers = { allowed-by-stress }
    .result = { $out_of_plane }
step-cut-foot = Shears at the foot
    .formula = your pull × allowed stress (Fy / Nd) / √(pull² + 3 (3/2 shear)²) on width × t
    .numbers = { allowed-by-stress }
    .result = { $foot_shear }
step-weld = Weld
    .formula = your pull × allowed stress (0.60 × weld metal / (1.2 Nd), no more than √2 × 0.60 × Fu of the plate) / stress on the throat
    .numbers = { allowed-by-stress }
    .result = { $weld }
step-pin-cut = Pin shears
    .formula = 2 × 3/4 × Fy / (√3 Nd) × π d² / 4
    .numbers = 2 × 3/4 × { OWN($yields) } / (√3 × { factor }) × π × ({ OWN($across, digits: 3) })² / 4
    .result = { $cut }
step-pin-bends = Pin bends
    .formula = 2 × Fy / Nd × π d³ / 32 / arm, arm = (clear + jaw) / 2 − t / 4
    .numbers = 2 × { OWN($yields) } / { factor } × π × ({ OWN($across, digits: 3) })³ / 32 / { OWN($arm, digits: 3) }
    .result = { $bends }
step-wall-pull = Wall folds under a straight pull (yield lines)
    .formula = Fy T² × (L / B + 2 √(1 − t / B))
    .numbers = { OWN($yields) } × ({ OWN($wall, digits: 3) })² × ({ OWN($weld_length) } / { OWN($span, digits: 3) } + 2 √(1 − { OWN($thickness) } / { OWN($span, digits: 3) }))
    .result = { $holds }, with no factor
step-wall-turn = Wall folds under bending across
    .formula = Fy T² / 2 × L
    .numbers = { OWN($yields) } × ({ OWN($wall, digits: 3) })² / 2 × { OWN($weld_length) }
    .result = { $turns }, with no factor
step-wall-folds = Wall folds under your pull
    .formula = 1 / (Nd × ((straight + 4 × level × height / L) / wall's pull + across × height / wall's bending))
    .numbers = 1 / ({ factor } × ({ $straight } / { OWN($pull) } + { OWN($arm, digits: 3) } / { OWN($turns) }))
    .result = { $folds }
step-wall-cut = Wall shears beside the weld
    .formula = Fy / (√3 Nd) × 2 L T
    .numbers = { OWN($yields) } / (√3 × { factor }) × 2 × { OWN($weld_length) } × { OWN($wall, digits: 3) }
    .result = { $cut }
step-own-tension = Plate beside the hole, by your rule
    .formula = your pull × allowed stress / (pull / (2 × side × t))
    .numbers = { allowed-by-stress }
    .result = { $holds }
step-own-shear = End, by your rule
    .formula = your pull × allowed stress / (pull / (2 × plane × t))
    .numbers = { allowed-by-stress }
    .result = { $holds }
step-own-bearing = Under the pin, by your rule
    .formula = your pull × allowed stress / (pull / (pin × t))
    .numbers = { allowed-by-stress }
    .result = { $holds }
step-own-foot = Foot, by your rule
    .formula = your pull × allowed stress / stress from pull and both bendings
    .numbers = { allowed-by-stress }
    .result = { $holds }
step-own-weld = Weld, by your rule
    .formula = your pull × allowed stress / stress on the throat
    .numbers = { allowed-by-stress }
    .result = { $holds }

## Why a result is absent

absent-pin-not-checked = the pin was not checked
absent-pin-by-its-mark = go by the mark on the shackle
absent-wall-not-checked = the wall was not checked
absent-no-own-stresses = no stresses of your own were given
absent-not-all-checked = pin and wall were not both checked

## Refusals

refused-thicker-than-the-hole = does not go into the hole. Give a pin no thicker than the hole.
refused-far-over-the-yield-strength = is more than { $most } times the yield strength, and no plate has that (our own bound). Look the two up again.
refused-over-the-tensile-strength = is over the tensile strength. Look the two up again.
refused-thicker-than-the-plate = is thicker than the plate, { $plate }. The weld cannot use more than the plate. Give no more than that.
refused-longer-than-the-plate = is longer than the plate is wide at the hole, { $wide }. Give no more than that, because the width at the foot is not asked for.
refused-hole-in-the-weld = puts the hole into the weld. Give at least half the diameter of the hole.
refused-narrower-than-the-lug = is narrower than the lug, { $plate }. Give at least the lug's thickness.
refused-no-wall-beside-the-lug = is no more than the lug is thick, { $plate }. Give the distance from one rib or corner to the next.
refused-own-all-or-none = is missing. Give all four stresses of your own rule, or none of them.

## The drawing

figure = Face and side of the lug to scale: { $wide } wide at the hole, { $thick } thick, pulled { PLACES($lean, places: 0) } off its line. The weakest part is highlighted: { $governing }.
