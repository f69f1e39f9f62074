# Words of the table turnbuckles. A key that is not here is looked for in common.ftl.

question = What may a turnbuckle pull?
description = Working load of turnbuckles by thread size and kind of end, and least breaking force with eye or stub ends.

## Read before you use it

note-hook-ends-hold-less = A hook end holds less than an eye, jaw or stub: half or less from 3/4 in up. It opens long before the body parts.
note-working-load-fifth-least = Working load is one fifth of the least breaking force.
note-written-highway-structures-guys = Written for highway structures and guys, not for lifting.
note-two-forged-series = From 5/16 in up the series after ASTM F1145 is rated above the federal one. Use the higher figure only where the mark or its maker's paper names that series, else the lower.
note-no-hook-in-f1145 = No number was read for hook ends of the series after ASTM F1145. Read the limit on the hook or ask its maker.
note-another-sheet-500-lb = Another sheet prints 500 lb, a little less. Take that.
note-mark-maker-governs = The mark of the maker governs.

## Cautions; table.toml says of which kind each is

caution-weaker-end-governs = Count the weaker end: an eye at one end and a hook at the other hold what the hook holds.
caution-not-a-lifting-part = A turnbuckle is not a lifting part unless its maker rates it so.
caution-count-the-threads = Count the threads inside both ends before you load it.

## Columns

column-thread_in = Thread
    .help = Thread diameter in inches.

column-make = Make
    .help = Which turnbuckle the source rates: one for highway structures, a forged one of type I form 1, any other type and form, or a forged one after ASTM F1145.
column-ends = Ends
    .help = Kind of end fittings. Where the two differ the weaker one governs.

## Quantities

quantity-working_load = Working load

## Words of the columns

word-make-highway = For highway structures
word-make-forged = Forged
word-make-other = Any other type
word-make-f1145 = After ASTM F1145
word-ends-eye_or_stub = Eye or stub ends
word-ends-jaw_eye_or_stub = Jaw, eye or stub ends
word-ends-eye = Eye at both ends
word-ends-jaw = Jaw at both ends
word-ends-hook = Hook ends
