# Words of the table bolt-strength. A key that is not here is looked for in common.ftl.

question = How strong is a bolt of this grade?
description = Proof, yield and tensile strength of bolts by grade or class, for frames and lugs that are bolted.

## Read before you use it

note-for-frames-and-lugs = For bolted frames and bases. Strength of the steel, not what a joint may carry: thread, shear, prying and the parts it holds decide as well.
note-two-misprinted-classes = Class 5.2 and 7 are misprinted in the chart that was read; they are left out.

## Cautions; table.toml says of which kind each is

caution-no-shackle-pin = No bolt, of any grade, takes the place of a shackle pin.

## Columns

column-bolt = Bolt
    .help = Standard, and grade or class.
column-size = Sizes
    .help = Sizes to which the line applies.

## Quantities

quantity-proof_strength = Proof strength
quantity-minimum_yield_strength = Least yield strength
quantity-minimum_tensile_strength = Least tensile strength

## Words of the columns

word-bolt-sae_j429_2 = SAE grade 2
word-bolt-sae_j429_5 = SAE grade 5
word-bolt-sae_j429_8 = SAE grade 8
word-bolt-astm_a325 = ASTM A325
word-bolt-astm_a307 = ASTM A307
word-bolt-iso_898_1_8_8 = Class 8.8
word-bolt-iso_898_1_10_9 = Class 10.9
word-bolt-iso_898_1_12_9 = Class 12.9
word-size-quarter_to_three_quarters = 1/4 to 3/4 in
word-size-over_three_quarters = over 3/4 to 1-1/2 in
word-size-quarter_to_one = 1/4 to 1 in
word-size-over_one = over 1 to 1-1/2 in
word-size-quarter_to_one_and_a_half = 1/4 to 1-1/2 in
word-size-half_to_one_and_a_half = 1/2 to 1-1/2 in
word-size-all = all sizes
word-size-below_m16 = below M16
word-size-m16_and_over = M16 and over
