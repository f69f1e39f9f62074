# Worksheet heat-colour.

title = What does that color on the steel mean?
summary = From a tint or a glow (temper color, heat color) to the temperature behind it, and what that temperature does to hardened and tempered steel.
story = The yard finds a dark blue band on the shank of a hoist hook. It hung beside the welding bench.

## What is asked

input-colour = Color you see
    .help = Give the hottest color anywhere on the part. A tint stays after cooling. A glow is what you saw while it was hot.
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
    .help = If you measured it while it was hot. If you give both, the hotter one is used.

## What is found

result-what_happened = What that temperature did
result-temperature = Temperature of the color or the thermometer
result-temperature_low = It can mean as little as
result-temperature_high = It can mean as much as
result-colour = Color

harms-met = { $harms }
nothing-printed = Nothing lasting is printed for this heat.
colour-reached = { $seen }
harm-blue-brittleness = Blue brittleness
    .words = Blue brittleness: while steel is this hot, it is stronger but snaps more easily.
harm-tempered-martensite = Tempered-martensite brittleness
    .words = Tempered-martensite brittleness: hardened steel that is held at this heat stays brittle after it cools.
harm-grade-100-chain = Grade 100 chain
    .words = Grade 100 chain permanently loses part of its rating at this heat (ASME B30.9).
harm-grade-80-chain = Grade 80 chain
    .words = Grade 80 chain permanently loses part of its rating at this heat (ASME B30.9).
harm-temper-brittleness = Temper brittleness
    .words = Temper brittleness: alloy steel that is held at this heat, or cooled slowly through it, turns brittle.
harm-softening = Softening
    .words = Softening: this is hotter than many parts were tempered, so they become softer.
harm-out-of-service = Out of service
    .words = Over { $out } alloy chain is removed from service permanently (OSHA 1910.184(e)(6)).
harm-treatment-gone = Heat treatment gone
    .words = The heat treatment is gone. If it cooled fast, the steel is hard and brittle. If it cooled slowly, { $steel } yields at about { $soft }. Tempered at { $temper }, it had { $hard }.

## What it means

told-by-colour = The color “{ $seen }” means that the steel reached about { $heat }.
told-by-heat = Steel heated to { $heat } shows the color “{ $seen }” at most.
told-by-heat-without-colour = Steel heated to { $heat } shows no color.
reason-overheated =
    .headline = { $told } Rated hardware that got this hot by accident has no rating any more.
    .caution = Remove rated hardware with a heat color from service, and tag it. Polishing the tint off does not repair it.
reason-no-printed-loss =
    .headline = { $told } No rule gives a loss at so low a temperature. But no color and no thermometer can give a part its rating back.
    .caution = { if-you-suspect }
reason-no-colour =
    .headline = A missing color proves nothing. Tints wear off or are ground off, and paint hides them.
    .caution = { if-you-suspect }
if-you-suspect = If you know or suspect that a part was in a torch flame, a weld or a fire, remove it from service, with or without a color.
reason-hotter-counts =
    .opening = You gave a color and a temperature. The hotter one counts, here { $which }.
    .caution = You gave a color and a temperature. The hotter one is used, here { $which }. The thermometer can have been read late, and a color can have worn off.
the-colour = the color
the-thermometer = the temperature
reason-time-and-bare-steel =
    .caution = A tint also needs time and bare steel, and it differs with the alloy. A long time at a lower temperature gives the same tint as a short time at a higher one. A tint proves heat. A missing tint proves nothing.
reason-dim-light =
    .caution = Judge a glow in dim light. In sunshine you do not see dull red.

## The working

step-harm = { $name }
    .formula = range of temperature
    .numbers = { $band }
    .result = reached
band-and-up = { $start } and up
band-to = { $start } to { $end }

## Why a result is absent

absent-cannot-be-told = not known
absent-nothing-told = Nobody can say.
absent-none-seen = none seen
absent-none-yet = none yet

## Refusals

refused-colour-missing = is missing. Pick the color you see, or give a temperature.

## The drawing

figure-no-colour = The ladder of heat colors. No color was seen, so nobody can say how hot it was.
figure-one-heat = The ladder of heat colors, coolest at the foot. The thick line marks the heat: { $low }.
figure-span = The ladder of heat colors, coolest at the foot. The thick line marks the heat: between { $low } and { $high }.
