# Words of the table chain-which-may-lift. A key that is not here is looked for in common.ftl.

question = Which chain may lift, and which may only tie down?
description = For each grade of chain: may it lift, may it tie down, and which rule says so.

## Read before you use it

note-yes-means-grade-made = Yes means that the grade is made for that use. Your chain still needs its mark, its tag and a clean inspection.
note-us-navy-asks-grade = The US Navy asks for grade 80 or better in its shore slings (read in a training question).
note-grade-120-maker-says = Grade 120: its maker says what it may do. No public table was seen, so none is given.
note-astm-a413-covers-grade-uses = ASTM A413 covers this grade for uses other than overhead lifting.
note-grade-70-made-work = Grade 70 is made for this work.
note-scope-names-slings-lifting-assemblies = Scope names slings and lifting assemblies. Chain with a readable grade mark, used as a tagged sling.
note-chain-readable-grade-mark-used = Chain with a readable grade mark, used as a tagged sling.
note-european-lifting-chain-grade-letter = European lifting chain, grade letter M.
note-european-lifting-chain-grade-letter-t = European lifting chain, grade letter T.
note-european-lifting-chain-grade-letter-v = European lifting chain, grade letter V.
note-older-european-lifting-chain-grade = Older European lifting chain, grade letter P.
note-hardware-proof-coil-chain-never = Hardware or proof coil chain is never used for hoisting.
note-no-sling-without-readable-marks = No sling without readable marks from its maker.
note-counts-grade-30-grade-30 = Counts as grade 30, at the grade 30 limit of its size, in the United States; in Canada as nothing.
note-welded-heated-only-maker-equal = Welded or heated: only the maker or an equal body may repair and prove it.
note-no-damaged-weakened-part-tie = No damaged or weakened part in a tie-down.

## Columns

column-grade = Grade
    .help = Grade, or unmarked, altered, proof_coil.
column-use = Use
    .help = What the chain would do.

## Quantities

quantity-allowed = Allowed

## Words of the columns

word-grade-proof_coil = Proof coil
word-grade-unmarked = Unmarked
word-grade-altered = Altered
word-use-lift = Lift
word-use-tie_down = Tie down
