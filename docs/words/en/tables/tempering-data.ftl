# Words of the table tempering-data. A key that is not here is looked for in common.ftl.

question = How strong is 4140 after tempering?
description = Strength and stretch of AISI 4140 and 1340 bar: annealed, normalised, and quenched and tempered.

## Read before you use it

note-annealed-heated-cherry-red = Annealed: heated cherry red and cooled slowly. Normalized: cooled in air.
note-how-long-each-piece = How long each piece was held is not printed; one hour is taken.

## Cautions; table.toml says of which kind each is

caution-never-for-a-hook-in-hand = These figures are for test pieces and for understanding. Never use them for a hook that you have.

## Columns

column-steel = Steel
    .help = AISI number.
column-condition = Condition
    .help = Heat treatment; numbers are degrees Celsius.
column-temper_degC = Tempered at
    .help = Tempering temperature, or none.

## Quantities

quantity-yield_strength = Yield strength
quantity-elongation = Elongation
quantity-reduction_of_area = Reduction of area

## Words of the columns

word-condition-annealed_815 = Annealed at 815 °C
word-condition-normalized_870 = Normalized at 870 °C
word-condition-oil_quenched = Quenched in oil
word-condition-annealed_800 = Annealed at 800 °C
word-temper_degC-none = not tempered
