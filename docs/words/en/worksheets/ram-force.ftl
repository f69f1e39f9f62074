# Worksheet ram-force.

title = How hard does my ram push at this pressure?
summary = The force of a hydraulic ram from bore and pressure, or the pressure for a force; several rams; the push on the pump's lever.
story = The yard's ten-ton ram pulls a mooring hook against the slip's bench; the gauge shows 4,300 psi.

## What is asked

input-bore = Bore of the ram
    .help = Inside diameter of the barrel, not the rod.
input-area = Or: effective area, from the plate
input-direction = The ram
option-direction-push = Pushes (oil on the full bore)
option-direction-pull = Pulls (oil on the rod's side)
input-rod = Diameter of the rod
input-rams = Rams on the pump
input-pressure = Pressure
input-force = Or: force wanted, all rams together
input-gauge_error = The gauge may be off by
    .help = Its class times its full scale, either way.
input-max_pressure = Highest pressure, from the plate
    .help = The lowest of ram, pump, hose and coupling.
input-ram_capacity = Capacity of one ram, from its plate
input-pump_bore = Bore of the hand pump
input-pump_stroke = Stroke of the pump piston
input-lever_to_hand = Lever: pivot to hand
input-lever_to_piston = Lever: pivot to pump piston
input-hand_force = Or: push on the lever

## What is found

result-force = Force, all rams together
result-force_each = Force of one ram
result-force_at_most = Force that the parts must bear, at most
result-force_at_least = Force of the rams before friction, at least
result-pressure = Pressure
result-area = Working area of one ram
result-hand_force = Push on the lever
result-lever_ratio = Ratio of the lever
result-travel_per_stroke = Travel of the rams for one stroke

## The headline and the cautions

opening = { $rams ->
        [1] The ram { $direction ->
            [pull] pulls
           *[push] pushes
        }
       *[other] The rams together { $direction ->
            [pull] pull
           *[push] push
        }
    } { $force } at { $pressure }.

reason-no-plate-limit =
    .headline = You have not said what ram, pump and hose are rated for. Give the highest pressure and the capacity from the plates.
    .caution = Read the plates of ram, pump, hose and coupling. The lowest pressure is the limit.
reason-no-plate =
    .headline = Compare it with the pressure and the capacity on the plates.
reason-over-plate =
    .headline = That is { $share } of the { $limit }. Too much.
    .caution = That is over the plate. Do not pump so high, and do not raise the setting of the relief valve.
reason-near-plate =
    .headline = That is { $share } of the { $limit }.
reason-inside-plate =
    .headline = That is { $share } of the { $limit }.
reason-pinhole =
    .caution = Oil from a pinhole in a hose goes through a glove and into the hand. Never feel for a leak. Release the pressure, then look. If oil gets under your skin, go to a hospital at once.
reason-travel-not-shared =
    .caution = Rams on one pump share the pressure but not the travel. The ram with less load moves first and tips the load. Watch both and stop often.
reason-rod-takes-area =
    .caution = On the pull side the rod takes area away, so the same pressure gives less force.
reason-may-be-over-plate =
    .headline = That is { $share } of the { $limit }, and if the gauge reads low, more than the plate allows. Too much.
    .caution = If the gauge reads low, the true pressure or force is over the plate. Stay below the plate by the error of the gauge.
reason-gauge-not-known =
    .headline = You have not said how far the gauge may be off, so the true pressure is not known.
    .caution = Give how far the gauge may be off: its class times its full scale. If it reads low, the true pressure is higher than you see.
reason-seals-rub =
    .caution = Seals and rods rub, so a ram gives a little less while it moves. A gauge has its own error, so check it first.

refused-rod-while-pushing = takes no area where the ram pushes. Leave it out, or choose that the ram pulls.
refused-rod-beside-area = is counted already in the effective area on the plate. Give the area alone, or bore and rod.
refused-no-gauge-read = belongs to a gauge, and no pressure was read here. Leave it out.
absent-no-gauge = not known: no gauge was read
absent-gauge-not-known = give how far the gauge may be off
plate-pressure = pressure on the plate
plate-capacity = capacity of one ram

## The working

step-area-given = Area of one ram
    .formula = as given
    .numbers = { $area }
    .result = { $area }
step-area-of-ring = Ring round the rod
    .formula = π/4 × (bore² − rod²)
    .numbers = π/4 × (({ OWN($bore) })² − ({ OWN($rod) })²)
    .result = { $area }
step-area-of-bore = Area of one ram
    .formula = π/4 × bore²
    .numbers = π/4 × ({ OWN($bore) })²
    .result = { $area }
step-pressure-by-pressure = Pressure
    .formula = as read
    .numbers = { OWN($pressure) }
    .result = { $pressure }
step-pressure-by-force = Pressure
    .formula = force / area of all rams
    .numbers = { OWN($force) } / ({ $rams } × { OWN($area) })
    .result = { $pressure }
step-pressure-by-hand_force = Pressure
    .formula = push × lever ratio / area of the pump piston
    .numbers = { OWN($push) } × { $lever_ratio } / { OWN($piston) }
    .result = { $pressure }
step-force-each = Force of one ram
    .formula = pressure × area
    .numbers = { OWN($pressure) } × { OWN($area) }
    .result = { $force_each }
step-force-all = All rams
    .formula = number × force of one
    .numbers = { $rams } × { OWN($force_each) }
    .result = { $force }
step-lever = Push on the lever
    .formula = pressure × area of the pump piston / lever ratio
    .numbers = { OWN($pressure) } × { OWN($piston) } / { $lever_ratio }
    .result = { $hand_force }

## Why a result is absent

absent-give-the-pump = give the sizes of the pump to find it
absent-no-pump = no pump given

## Refusals

refused-one-of-bore-and-area = or the area is needed. Give the bore, such as 2-1/8 in.
refused-not-thinner = is not thinner than the bore. Give the diameter of the rod.
refused-pressure-missing = is needed, or the force wanted, or the push on the lever.
refused-one-too-many = is one too many. Give only one of pressure, force wanted and push on the lever.
refused-pump-missing = is needed with a push on the lever. Give bore and both lever arms.

## The drawing

figure = Section through { $rams ->
        [1] the ram
       *[other] one of { $rams } rams
    }: oil at { $pressure } on { $side ->
        [ring] the ring round the rod
       *[bore] the full bore
    } of { $bore } gives { $force }{ $rams ->
        [1] { "" }
       *[other] { " " }from all rams together
    }.
