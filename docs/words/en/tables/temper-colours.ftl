# Words of the table temper-colours. A key that is not here is looked for in common.ftl.

question = What does the color of the steel say about its heat?
description = Oxide tints and glow colors of steel with the temperature each stands for.

## Read before you use it

note-tint-depends-time-alloy = Tint depends on time and alloy too. A tint proves heat. A missing tint proves nothing: it can be ground off or painted over.
note-blue-stands-near-300 = Blue is near 300 °C (570 °F), far above the 204 °C (400 °F) at which alloy chain begins to lose rating.

## Cautions; table.toml says of which kind each is

caution-tint-or-glow-ends-it = Remove rated hardware from service if it shows any tint or has glowed.

## Columns

column-colour = Color
    .help = Name of the color.
column-kind = Kind
    .help = Oxide tint (stays after cooling) or incandescence (glow).

## Quantities

quantity-temperature_low = Temperature low
quantity-temperature_high = Temperature high

## Words of the columns

word-colour-very-pale-yellow = Very pale yellow
word-colour-straw-yellow = Straw yellow
word-colour-dark-straw = Dark straw
word-colour-brownish-yellow = Brownish yellow
word-colour-yellow-tinged-with-purple = Yellow tinged with purple
word-colour-light-purple = Light purple
word-colour-dark-purple = Dark purple
word-colour-dark-blue = Dark blue
word-colour-pale-blue = Pale blue
word-colour-blue-tinged-with-green = Blue tinged with green
word-colour-first-sign-of-red = First sign of red
word-colour-dull-red = Dull red
word-colour-dark-cherry = Dark cherry
word-colour-cherry-red = Cherry red
word-colour-bright-red = Bright red
word-colour-dull-orange = Dull orange
word-colour-bright-orange = Bright orange
word-colour-white-heat = White heat
word-colour-bright-white = Bright white
word-colour-dazzling-white = Dazzling white
word-kind-oxide_tint = Oxide tint
word-kind-incandescence = Incandescence
