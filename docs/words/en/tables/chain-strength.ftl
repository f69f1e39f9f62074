# Words of the table chain-strength. A key that is not here is looked for in common.ftl.

question = How strong is lifting chain, and how was it proved?
description = Working load limit, factory proof force, least breaking force and bend of European lifting chain: grade 4 as printed, grade 8 working load limits.

## Read before you use it

note-grade-number-times-100 = The grade number times 100 is the stress in both sides of a link, in N/mm², at which new chain must not yet break.
note-proof-breaking-forces-chain = Proof and breaking forces are a chain maker’s tests of new chain. Never load by them.
note-grade-8-only-working = For grade 8 only the working load limits were read; its breaking force follows from the grade.

## Cautions; table.toml says of which kind each is

caution-proof-is-no-rating = A chain that once held its proof force is not rated for it.

## Quantities

quantity-manufacturing_proof_force = Manufacturing proof force
quantity-minimum_bend_deflection = Minimum bend deflection
