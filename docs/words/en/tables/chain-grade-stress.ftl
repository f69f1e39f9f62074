# Words of the table chain-grade-stress. A key that is not here is looked for in common.ftl.

question = What does the grade number of a chain mean?
description = Mean stress in the link at the least breaking force, by grade letter and number.

## Read before you use it

note-least-breaking-force-stress = Least breaking force = stress × two round sections of the link’s wire. Grade 80 in American marks is 800 N/mm², like grade 8.
note-630-not-600-grade-whose = 630, not 600: the one grade whose number is not the stress over 100.

## Cautions; table.toml says of which kind each is

caution-does-not-rate-a-found-chain = This says what the maker built. It does not rate a chain you found.

## Columns

column-letter = Letter
    .help = European grade letter.

## Quantities

quantity-mean_stress_at_minimum_break = Mean stress at minimum break
