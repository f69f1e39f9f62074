# What stands round every table, whatever is in it.

seen-text = read in the source's own text
seen-copy = read in a reprint, not in the source itself
    .ring = read in a reprint
seen-memory = not seen in text
    .ring = not seen in text

our-default = our default
    .mark = our default:
    .said = { $mark }: where sources differ, the worksheets judge by this one. It is the stricter, unless a note says why not.
not-our-default = not our default

## Units of the tables that are not simply named by their symbol

unit-rope_diameter = rope diameters
unit-t = t (metric)
unit-short_ton = short tons
measured-short_ton = { $value } short { $value ->
        [one] ton
       *[other] tons
    }

## The table

show-only = Show only
all = all
more-columns = More columns to the right: slide the table.
    .or-choose = More columns to the right: slide the table, or choose from the lists above.
table-named = { $name }, table
plain-table = Table: { $heads }
column-source = Source
nothing-printed = nothing printed
made = { $mark } worked out by us from the printed value; ratings and limits are rounded down, least values up.
all-copied = Every value was read in a reprint, not in the source itself.
some-copied = { $ring } read in a reprint, not in the source itself: { $count } of { $rows } values.
some-recalled = { $ring } not seen in text: { $count } of { $rows } values. Each one is held by a rule that the table must keep, and a test checks it.
# The first line of a page with figures from memory.
recalled = Recalled, not read: { $count } of { $rows } figures, marked { $ring }. Go by the mark on the part, or read the source first.
    .all = Recalled, not read: every figure here. Go by the mark on the part, or read the source first.
all-read = Every value was read in its source's own text.
tap-a-value = Tap a value to see where it stands.
let-go = Let go

## What stands under it

read-before = Read before you use it
where-it-stands = Where each value stands
values-from = { $values } from { $places } in { $sources }
place-count = { $count } { $count ->
        [one] place
       *[other] places
    }
column-place = Place in it
column-seen = How seen
column-note = Note
as-csv = Table as CSV
as-json = Table as JSON
