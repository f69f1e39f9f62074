# Words of the table sources. A key that is not here is looked for in common.ftl.

question = Where does each figure come from?
description = One card for every source named in the tables.

## Read before you use it

note-column-how-seen-every = The column "How seen" of every table says how each single row was read.

## Columns

column-key = Key
column-title = Title
column-publisher = Publisher
column-edition = Edition
column-governs = What it governs
column-how_read = How it was read
column-licence = Terms of the figures
column-prints = Units it prints
    .help = us or si where it prints that system only; any where it prints both.
word-prints-us = US units
word-prints-si = SI units
word-prints-any = both
