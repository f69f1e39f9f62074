# Words of the table chain-marks. A key that is not here is looked for in common.ftl.

question = What does the mark on this chain mean?
description = Marks found on chain links, and the grade each one names.

## Read before you use it

note-marks-stand-raised-links = Marks stand raised on links, about every foot. Look at several.
note-8-80-800-t = 8, 80, 800 and T all name grade 80 (8 in Europe); 10, 100, 1000 and V name grade 100 (10).
note-3-grade-30-4 = 3 is grade 30. 4 is grade 43 on American chain and grade 4 on European lifting chain, also marked M. If you do not know where it was made, treat it as unmarked.
note-european-letter-mark-lifting-chain = European letter mark of lifting chain.

## Cautions; table.toml says of which kind each is

caution-no-mark-no-lift = No readable mark: no lifting use at all. For tie-down it counts as grade 30 in the United States (49 CFR 393.108(d)); in Canada it counts as nothing.

## Columns

column-example = Kind of mark
    .help = First, second or third mark example of the law, or the European letter.

## Quantities

quantity-mark = Mark

## Words of the columns

word-example-1 = Short mark
word-example-2 = The grade itself
word-example-3 = Grade × 10
word-example-letter = Letter
