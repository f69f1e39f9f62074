# Words of the table turnbuckles. A key that is not here is looked for in common.ftl.

question = What may a turnbuckle pull?
description = Working load and least breaking force of turnbuckles complete with ends, by thread size.

## Read before you use it

note-working-load-fifth-least = Working load is one fifth of the least breaking force in every row.
note-written-highway-structures-guys = Written for highway structures and guys, not for lifting.
note-mark-maker-governs = The mark of the maker governs.

## Cautions; table.toml says of which kind each is

caution-not-a-lifting-part = A turnbuckle is not a lifting part unless its maker rates it so.
caution-count-the-threads = Count the threads inside both ends before you load it.

## Columns

column-thread_in = Thread
    .help = Thread diameter in inches.

## Quantities

quantity-working_load = Working load
