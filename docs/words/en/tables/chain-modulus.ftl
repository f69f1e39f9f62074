# Words of the table chain-modulus. A key that is not here is looked for in common.ftl.

question = How much does chain stretch under load?
description = Elastic modulus of chain on the section of both sides of a link.

## Read before you use it

note-measured-mooring-chain-60 = Measured on mooring chain of 60 to 200 mm. For lifting chain of 10 mm it is a guess by analogy.
note-printed-power-ten = Printed as a power of ten.
note-modulus-constant-x-diameter-mm = Modulus = constant - this x diameter in mm.
note-stiffness-ea-x-diameter-squared = Stiffness EA = this x diameter squared.
note-over-sides-link = Over both sides of the link.

## Columns

column-chain = Chain
    .help = Kind of chain.

## Quantities

quantity-modulus_constant = Modulus
quantity-modulus_fall_per_mm = Falls with each mm of diameter by
quantity-stiffness_over_diameter_squared = Stiffness over diameter squared

## Words of the columns

word-chain-studless_r3 = Studless, grade R3
word-chain-studless_r4 = Studless, grade R4
word-chain-studless_r5 = Studless, grade R5
word-chain-stud_link = Stud link
word-chain-studless_generic = Studless, any
