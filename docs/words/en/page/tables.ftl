# What stands round every table, whatever is in it.

seen-text = read in the source's own text
seen-copy = read in a reprint, not in the source itself
    .ring = read in a reprint
seen-memory = not seen in text
    .ring = not seen in text

our-default = the worksheets use this
    .mark = The worksheets use
    .said = { $mark }: where sources differ, this is the stricter figure, unless a note says why not.
not-our-default = not used

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
table-named = { $name }, table
plain-table = Table: { $heads }
column-source = Source
nothing-printed = nothing printed
# The one meaning of a dash in a table.
angles-angle = Angles of the leg.
angles-angle-from-vertical = Angles from the vertical.
angles-angle-from-horizontal = Angles from the horizontal.
gap = – means that the source prints nothing here.
made = { $mark } worked out by us from the printed value; ratings and limits are rounded down, least values up.
all-copied = Every value was read in a reprint, not in the source itself.
some-copied = { $ring } read in a reprint, not in the source itself: { $count } of { $rows } values.
some-recalled = { $ring } not seen in text: { $count } of { $rows } values. Go by the mark on the part, or read the source first.
# The first line of a table with figures from memory.
recalled = { $ring } Recalled: { $count } of { $rows }.
    .all = { $ring } All recalled, not read.
let-go = Close

## What stands under it

read-before = Read before you use it ({ $count })
claims-named = Where each value stands: { $name }
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
all-as-data = All tables as data
file-size = ({ $size } kB)

## What changed from edition to edition

changed-since = Edition { $edition }, since { $since }
changed-changed = Figures that changed
changed-withdrawn = Figures that were withdrawn
changed-meaning = What a table means
changed-words = Notes and cautions
changed-none = No figure changed.
changed-added = Values that are new
changed-reading = Values whose source, place or way of reading is another
changed-count = { $count } in

## Pages that are now part of another

moved = The page has moved
    .there = Go to the page where it is now

## Sources as people cite them; the sources page has the whole title

short-osha-1910-184 = OSHA 1910.184
short-osha-1910-179 = OSHA 1910.179
short-osha-1917 = OSHA 1917
short-osha-1918 = OSHA 1918
short-osha-1919 = OSHA 1919
short-osha-1926-251 = OSHA 1926.251
short-osha-sling-guidance = OSHA sling tables
short-cfr-49-393 = 49 CFR 393
short-wac-296-155 = Washington, WAC 296-155
short-wac-296-24 = Washington, WAC 296-24
short-wac-296-304 = Washington, WAC 296-304
short-wac-296-54 = Washington, WAC 296-54
short-wac-296-56 = Washington, WAC 296-56
short-wac-296-78 = Washington, WAC 296-78
short-wac-296-874 = Washington, WAC 296-874
short-michigan-r408 = Michigan R 408
short-california-t8 = California Title 8
short-ohio-4123 = Ohio 4123:1-3
short-ontario-851 = Ontario Reg. 851
short-alberta-ohs = Alberta OHS Code
short-canada-sor-2007-128 = Canada SOR/2007-128
short-canada-crc-1494 = Canada C.R.C. 1494
short-nsc-10 = Canada NSC 10
short-doe-std-1090 = DOE-STD-1090
short-mil-std-209 = MIL-STD-209K
short-nd-0027 = Offshore guideline 0027/ND
short-ema-4wd = Australian vehicle recovery manual
short-ema-disaster-rescue = Australian rescue manual
short-site-safe-nz = Site Safe New Zealand
short-nz-lifting-code = New Zealand rigging code
short-qld-pn10123 = Queensland PN10123
short-bs-en-13889-note = Note on EN 13889
short-master-link-sheet = Sheet after EN 1677-4
short-lloyds-lame = Ship classification code
short-navedtra-14251 = US Navy NAVEDTRA 14251
short-navedtra-14080 = US Navy NAVEDTRA 14080
short-navedtra-14026 = US Navy NAVEDTRA 14026
short-asme-b30-9-warning = Sheet after ASME B30.9
short-loler-1998 = LOLER 1998
short-eu-2006-42 = EU 2006/42/EC
short-ctu-code = CTU Code
short-building-material-list = Building material list
short-en-818-4-table-two = Table after EN 818-4
short-din-en-818-4-load-table = Table after EN 818-4
short-eu-guidelines-2006 = European securing guidelines
short-eu-2014-47 = EU 2014/47
short-gov-uk-securing-loads = UK guide, securing loads
short-rr-c-271 = RR-C-271
short-rr-c-271-sheet = Sheet after RR-C-271
short-rr-c-271-load-chart = Chart after RR-C-271
short-asme-b36-10-chart = Chart after ASME B36.10M
short-ec3-1-2 = EN 1993-1-2
short-gere = Mechanics textbook
short-openstax-physics = Physics textbook
short-shigley = Machine design textbook
short-baker-haynes = Statics textbook
short-dooley-1919 = Metal workers’ textbook, 1919
short-en-1492-1-reprint = Table after EN 1492-1
short-bg-bau-ubt3074 = BG BAU ubt3074
short-india-dock-1990 = India, dock rules 1990
