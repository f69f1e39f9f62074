# Worksheet heat-colour.

title = What does that colour on the steel mean?
summary = From a tint or a glow to the heat behind it, and what that heat did to hardened and tempered steel.
story = The yard finds a dark blue band on the shank of a hoist hook that hung beside the welding bench.

## What is asked

input-colour = Colour you see
    .help = The hottest colour anywhere on the part. Tints stay after cooling; a glow you saw while it was hot.
option-colour-very-pale-yellow = very pale yellow tint
option-colour-straw-yellow = straw yellow tint
option-colour-dark-straw = dark straw tint
option-colour-brownish-yellow = brownish yellow tint
option-colour-yellow-tinged-with-purple = yellow tinged with purple tint
option-colour-light-purple = light purple tint
option-colour-dark-purple = dark purple tint
option-colour-dark-blue = dark blue tint
option-colour-pale-blue = pale blue tint
option-colour-blue-tinged-with-green = blue tinged with green tint
option-colour-first-sign-of-red = first sign of red glow
option-colour-dull-red = dull red glow
option-colour-dark-cherry = dark cherry glow
option-colour-cherry-red = cherry red glow
option-colour-bright-red = bright red glow
option-colour-dull-orange = dull orange glow
option-colour-bright-orange = bright orange glow
option-colour-white-heat = white heat glow
option-colour-bright-white = bright white glow
option-colour-dazzling-white = dazzling white glow
option-colour-none = none to be seen
input-temperature = The temperature it reached
    .help = If you measured it while it was hot. Where you give both, the hotter one counts.

## What is found

result-what_happened = What that heat did
result-temperature = Heat of the colour or the thermometer
result-temperature_low = That stands for as little as
result-temperature_high = That stands for as much as
result-colour = Colour

harms-met = { $harms }
nothing-printed = Nothing lasting is printed for this heat.
colour-reached = { $seen }
harm-blue-brittleness = Blue brittleness
    .words = Blue brittleness: while it is this hot, steel is stronger but snaps more easily.
harm-tempered-martensite = Tempered-martensite brittleness
    .words = Tempered-martensite brittleness: hardened steel held in this band stays brittle after it cools.
harm-grade-100-chain = Grade 100 chain
    .words = Grade 100 chain loses rating for good from this heat on (ASME B30.9).
harm-grade-80-chain = Grade 80 chain
    .words = Grade 80 chain loses rating for good from this heat on (ASME B30.9).
harm-temper-brittleness = Temper brittleness
    .words = Temper brittleness: alloy steel held here, or cooled slowly through it, turns brittle.
harm-softening = Softening
    .words = Softening: tempered again, hotter than many parts were tempered.
harm-out-of-service = Out of service
    .words = Over { $out } alloy chain is taken out of service for good (29 CFR 1910.184(e)(6)).
harm-treatment-gone = Heat treatment gone
    .words = The heat treatment is gone. Cooled fast the steel is glass-hard; cooled slowly { $steel } yields at about { $soft }, where it gave { $hard } when tempered at { $temper }.

## What it means

told-by-colour = A { $seen } means the steel reached about { $heat }.
told-by-heat = Steel heated to { $heat } shows { $seen } at most.
told-by-heat-without-colour = Steel heated to { $heat } shows no colour.
reason-overheated =
    .headline = { $told } Stop: rated hardware that got this hot by accident has no rating.
    .caution = Take rated hardware with a heat colour out of use and mark it so. Polishing the tint off mends nothing.
reason-no-printed-loss =
    .headline = { $told } No rule prints a loss this cool, but a colour or a thermometer cannot give a rating.
    .caution = { if-you-suspect }
reason-no-colour =
    .headline = No colour proves nothing. Tints wear, grind and blast off, and paint hides them.
    .caution = { if-you-suspect }
if-you-suspect = If you know or suspect that a part met a torch, a weld or a fire, take it out of use, colour or not.
reason-hotter-counts =
    .opening = You gave a colour and a temperature. The hotter one counts, here { $which }.
    .caution = A colour and a temperature were given. The hotter counts, here { $which }: a thermometer may have been late, and a colour may be gone.
the-colour = the colour
the-thermometer = the temperature
reason-time-and-bare-steel =
    .caution = A tint also needs time and bare steel, and it differs with the alloy: a long warm hold tints like a short hot one. A tint proves heat; no tint proves nothing.
reason-dim-light =
    .caution = Glow is judged in dim light. In sunshine dull red is missed.

## The working

step-harm = { $name }
    .formula = band of heat
    .numbers = { $band }
    .result = met
band-and-up = { $start } and up
band-to = { $start } to { $end }

## Why a result is absent

absent-cannot-be-told = cannot be told
absent-nothing-told = Cannot be told.
absent-none-seen = none seen
absent-none-yet = none yet

## Refusals

refused-colour-missing = is missing. Pick the colour you see, or give a temperature.

## The drawing

figure-no-colour = The ladder of heat colours. No colour was seen, so no heat can be told.
figure-one-heat = The ladder of heat colours, coolest at the foot. The thick line marks the heat: { $low }.
figure-span = The ladder of heat colours, coolest at the foot. The thick line marks the heat: between { $low } and { $high }.
