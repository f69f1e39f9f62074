# Words of the table inspection-intervals. A key that is not here is looked for in common.ftl.

question = How often must lifting and tie-down gear be inspected?
description = Longest time between two full inspections, by kind of gear, place and service.

## Read before you use it

note-longest-not-best = Each interval is the longest gap that the source allows. After hard use, a fall, an overload or a fault, inspect the part at once.
note-set-by-use = Or sooner: use, severity, kind of lifts and experience set it.
note-month-is-kept = The month of the last look is kept.
note-lifting-device = For lifting devices, which this gear is part of.
note-or-by-scheme = Or as a written scheme of examination sets it.
note-heavy-use = In heavy use.
note-where-adopted = A standard: it binds where a law or a contract takes it up.
note-monthly-to-quarterly = Monthly to quarterly; the longest stands here.
note-round-slings = For round slings in construction.
note-law-names-trips-only = The laws that were read ask for a look at each trip, and name no longer interval for this gear.
note-with-the-vehicle = The yearly inspection of the vehicle, of which the anchor is a part.
note-daily-look-besides = With a written certification each month; a look each day besides.

## Cautions; table.toml says of which kind each is

caution-look-before-each-use = Look the part over before each day's use as well. No interval replaces that look.
caution-ask-your-regulator = These are short readings of laws and standards on a day. Ask your own regulator what binds you.

## Columns

column-item = Gear
    .help = Kind of gear.
column-place = Place
    .help = Where the rule holds.
column-service = Service
    .help = How hard or how often the gear is used.

## Quantities

quantity-longest_gap = Months at most

## Words of the columns

word-item-crane_hook = Hook of a crane or hoist
word-place-us-federal = United States, federal
word-place-us-standard = United States, standards
word-place-us-washington = Washington
word-place-us-california = California
word-place-us-michigan = Michigan
word-place-canada-ontario = Ontario
word-place-uk = United Kingdom
word-place-germany = Germany
word-place-australia = Australia
word-service-any = Any
word-service-normal = Normal
word-service-severe = Severe or heavy
word-service-lifts_1_to_5 = 1 to 5 lifts a week
word-service-lifts_6_to_25 = 6 to 25 lifts a week
word-service-lifts_26_to_200 = 26 to 200 lifts a week
word-service-lifts_over_200 = Over 200 lifts a week
word-item-tie_down_strap = Tie-down strap
word-item-tie_down_chain = Tie-down chain and binder
word-item-vehicle_anchor = Anchor on truck or trailer
