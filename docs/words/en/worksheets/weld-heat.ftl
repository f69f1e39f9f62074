# Worksheet weld-heat.

title = What does one weld bead do to the steel beside it?
summary = How far the heat reaches beside a weld bead (heat-affected zone), how hard the steel becomes, and how warm the whole part gets.
story = A helper at the yard asks what a 2 in stick bead on the shank of a forged 4140 hook would do. They work it out and do not weld it.

## What is asked

input-process = Welding process
    .help = Choose the one that you would use.
option-process-smaw = Stick (SMAW)
option-process-gmaw = MIG/MAG (GMAW)
option-process-fcaw = Flux-cored (FCAW)
option-process-gtaw = TIG (GTAW)
option-process-saw = Submerged arc (SAW)
option-process-plasma = Plasma
input-volts = Arc voltage
    .help = While welding, not open circuit.
input-amps = Welding current
    .help = While welding.
input-speed = Travel speed
    .help = Length of bead over its arc time.
input-thickness = Thickness of the steel
    .help = Of the section under the bead.
input-joint = Kind of bead
    .help = It changes how fast the heat flows away.
option-joint-bead = Bead on the face
option-joint-fillet = Fillet
input-steel = Steel
    .help = Makers do not publish the steel of a hook. If you do not know it, the answer covers all steels of our table.
option-steel-unknown = I do not know
option-steel-4140 = AISI 4140
option-steel-4340 = AISI 4340
option-steel-4130 = AISI 4130
option-steel-8640 = AISI 8640
option-steel-8620 = AISI 8620
option-steel-8630 = AISI 8630
option-steel-1340 = AISI 1340
option-steel-1045 = AISI 1045
option-steel-chain_steel_patent_a = chain steel, from a patent (A)
option-steel-chain_steel_patent_b = chain steel, from a patent (B)
option-steel-mining_chain_steel_patent = mining chain steel, from a patent
option-steel-small_chain_steel_patent = small chain steel, from a patent
option-steel-composition = By its composition
input-carbon = Carbon (C)
    .help = Percent by weight, from the mill sheet; 0 where it says none.
input-manganese = Manganese (Mn)
    .help = Percent by weight, from the mill sheet; 0 where it says none.
input-silicon = Silicon (Si)
    .help = Percent by weight, from the mill sheet; 0 where it says none.
input-chromium = Chromium (Cr)
    .help = Percent by weight, from the mill sheet; 0 where it says none.
input-nickel = Nickel (Ni)
    .help = Percent by weight, from the mill sheet; 0 where it says none.
input-molybdenum = Molybdenum (Mo)
    .help = Percent by weight, from the mill sheet; 0 where it says none.
input-vanadium = Vanadium (V)
    .help = Percent by weight, from the mill sheet; 0 where it says none.
input-copper = Copper (Cu)
    .help = Percent by weight, from the mill sheet; 0 where it says none.
input-preheat = Temperature of the steel before the bead
    .help = The temperature of the part before you weld.
input-peak_temperature = A temperature to find
    .help = Shows how far from the melt it got this hot. For example, give the temperature at which the part was tempered.
input-stock_mass = Weight of the part
    .help = To find how warm all of it gets.
input-weld_length = Length of all beads together
    .help = To find how warm all of the part gets.
input-softening = Work out the softened band of a 4140 test piece too
    .help = It takes longer.

## What is found

result-heat_input = Heat input
result-hard_zone = Hardness of the zone beside the bead
result-hard_width_low = Width of the hard zone, least
result-hard_width_high = Width of the hard zone, greatest
result-hard_width = Width of the hard zone, middle
result-bulk_temperature_rise = Warming of the whole part
result-cooling_time_8_5 = Cooling from 800 to 500 °C [s]
result-carbon_equivalent = Carbon equivalent [%]
result-carbon_equivalent_low = Carbon equivalent, least [%]
result-carbon_equivalent_high = Carbon equivalent, greatest [%]
result-band = How such steel welds in general
result-hard_zone_low = Hardness of the zone, least [HV]
result-hard_zone_high = Hardness of the zone, greatest [HV]
result-distance = From the melt to the chosen heat, middle
result-distance_low = From the melt to the chosen heat, least
result-distance_high = From the melt to the chosen heat, greatest
result-distance_adams = The same by Adams
result-melted_edge = Edge of the melt, from the bead's middle
result-hard_edge = Edge of the hard zone, from the bead's middle
result-tint_edge = Edge of the tint, from the bead's middle
result-softened_width_low = Softened zone of 4140 by the tempering rule
result-softened_width_high = Softened band of 4140 as if held an hour
result-transition_thickness = Thickness from which plate is thick

hardness-span = { $low } to { $high } HV ({ $low_hrc } to { $high_hrc } HRC)
hardness-about = about { $high } HV ({ $high_hrc } HRC)
under-rockwell = under { $end }
over-rockwell = over { $end }
carbon-equivalent-span = { $carbon_equivalent } % ({ PLACES($carbon_equivalent_low, places: 2) } to { PLACES($carbon_equivalent_high, places: 2) } %)
weldability-one = { $worst }
weldability-span = { $best } to { $worst }
weldability-excellent = excellent
weldability-very_good = very good
weldability-good = good
weldability-fair = fair
weldability-poor = poor
adams-for-thin-plate = { $distance } (rule for thin plate; this is not)
rise-up-to = up to { $rise }

## What it means

opening = The bead puts in { $heat_input }.
reason-welded =
    .headline = { $hard_zone ->
        [absent] How hard the steel beside it becomes is outside the range of these formulas.
       *[other] The steel beside it (heat-affected zone) becomes up to { $hardest } HV hard, over a width of { $hard_width_low } to { $hard_width_high }.
    } A welded part cannot be rated.
    .caution = A weld on rated hardware voids its rating. Nothing here gives the rating back. Remove the part from service.
reason-steel-not-known =
    .caution = The steel is not known, so the figures cover all steels of our table. A steel with more carbon becomes even harder.
reason-left-out =
    .caution = This leaves out hydrogen, the notch at the toe of the weld, and shrinkage stress as high as the strength of the steel. They crack welded hooks, often days later and without a sign.
reason-narrow-section =
    .caution = This is worked out for a wide plate. In the narrow section of a hook the heat cannot flow away, so every zone is wider there.

## The working

step-heat-input = Heat input
    .formula = factor × volts × amps / speed
    .numbers = { DIGITS($factor, digits: 2) } × { DIGITS($volts, digits: 6) } × { DIGITS($amps, digits: 6) } / { OWN($speed) }
    .result = { $heat_input }
step-reach = Reach of a heat
    .formula = Rosenthal, a moving arc on a plate, both faces as mirrors
    .numbers = { DIGITS($least, digits: 2) } to { DIGITS($greatest, digits: 2) } of the arc's power, conductivity { $least_conductivity } to { $greatest_conductivity } W/(m K)
    .result = { $chosen }: { $distance_low } to { $distance_high } from the melt
step-adams = The same by Adams, for thin plate
    .formula = H [1/(Tp − T0) − 1/(Tm − T0)] / (4.13 ρc t)
    .numbers = { $heat_input }, { OWN($thickness) } thick
    .result = { $distance }
step-cooling = Cooling from 800 to 500 °C
    .formula = EN 1011-2, annex D, { $branch } plate (from memory)
    .numbers = { $heat }, { $thick }, start { $start }
    .result = { $cooling_time_8_5 } s
thick-plate = thick
thin-plate = thin
step-carbon-equivalent = Carbon equivalent
    .formula = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15
    .numbers = { PLACES($carbon_equivalent_low, places: 2) } to { PLACES($carbon_equivalent_high, places: 2) } %
    .result = { $band } for welding in general
step-hardness = Hardness of the zone
    .formula = three fits for martensite, one with the cooling time (from memory)
    .numbers = lowest to highest over the steel's limits
    .result = { $hard_zone }
step-warming = Warming of the whole part, nothing lost
    .formula = heat input × bead length / (weight × specific heat)
    .numbers = { $heat_input } × { OWN($weld_length) } / ({ OWN($stock_mass) } × { $specific_heat } J/(kg K))
    .result = { $rise } hotter

## Why a result is absent

absent-heat-out-of-range = out of range: answered from { $least } to { $greatest }
absent-no-cooling-time = out of range: no cooling time to work from
absent-outside-the-fits = out of range: the fits hold for { $least } to { $greatest } % carbon and up to { $alloy } % Mn + Ni + Cr + Mo
absent-hotter-than-the-tint = all of it: it starts hotter than the first tint
absent-not-in-the-data = not in the data
absent-not-asked = not asked
absent-give-the-weight = give the weight of the part
absent-give-the-length = give the length of all beads together
absent-part-too-hot = out of range: the whole part would pass { $limit }

## Refusals

refused-over-melting = is at or over melting. Give a temperature below { $melting }.
refused-not-below-the-chosen = is not below the chosen temperature of { $chosen }. Give a colder start.
refused-start-too-hot = is out of range. Give up to { $hottest }.
refused-not-by-composition = does not go with a steel chosen by its name. Choose the steel by its composition, or leave this out.
refused-over-the-whole = and the rest add up to { DIGITS($total, digits: 4) } %, over 100 %. Give percent by weight.

## The drawing

figure-melted = melted
figure-hard = hard zone: over { $heat }
figure-softened = softened: over { $heat }
figure-tinted = tinted: over { $heat }
band-melted = melted
band-hard = hard
band-softened = softened
band-tinted = tinted
band-reach = { $band } out to { $reach }
figure = Section across the bead in steel { $thickness } thick, measured from the middle of the bead along the face: { $bands }; unchanged beyond that.{ $through ->
        [0] { "" }
       *[other] { " " }Right through the thickness: { $through }.
    }
