# Words of the table shop-duties. A key that is not here is looked for in common.ftl.

question = What do laws ask about lifting gear, place by place?
description = Inspection, who may do it, records, tags, gear made for own use, and the shop with no employee.

## Read before you use it

note-short-readings = Each line is a short reading of one text, in our words, on the day that it names. Lines that differ are both here.
note-construction-apart = A line that begins with “In construction” holds on a building site. The other lines of that place hold in a shop.
note-own-use-both = The German ordinance and the machinery regulation of the Union differ about own use. Read both.
note-tasmania-only = The page of the regulator of Tasmania.

## Cautions; table.toml says of which kind each is

caution-ask-your-regulator = This table is not legal advice, and laws change. Ask your own regulator what binds you.

## Columns

column-place = Place
    .help = Where the rule holds.
column-item = Gear
    .help = Kind of gear.
column-duty = About
    .help = What the rule is about.
column-dated = Date
    .help = The day or edition of the text, or when it was read.
column-case = Which point
    .help = A short name of the point.

## Words of the columns

word-place-us-federal = United States, federal
word-place-us-standard = United States, standards (where a law or contract takes them up)
word-place-us-state-plans = United States, states with a plan of their own
word-place-us-washington = Washington
word-place-us-california = California
word-place-us-michigan = Michigan
word-place-canada-federal = Canada, federal workplaces
word-place-canada-ontario = Ontario
word-place-canada-alberta = Alberta
word-place-canada-bc = British Columbia
word-place-canada-provinces = Other provinces of Canada
word-place-uk = United Kingdom
word-place-ireland = Ireland
word-place-germany = Germany
word-place-eu = European Union
word-place-australia = Australia
word-place-new-zealand = New Zealand
word-item-sling = Any sling
word-item-fibre_rope_sling = Fiber rope sling
word-item-round_sling = Round sling
word-item-crane_hook = Hook of a crane or hoist
word-item-crane = Crane
word-item-hoist = Hoist
word-item-hoist_chain = Hoist chain
word-item-jack = Jack
word-item-lifting_frame = Lifting beam, frame or clamp
word-item-lifting_accessory = Lifting accessory
word-item-rigging_hardware = Shackle, ring, other hardware
word-item-any_gear = Any lifting gear
word-duty-inspection = Inspection
word-duty-who = Who may do it
word-duty-record = Record
word-duty-tag = Tag and mark
word-duty-own_made = Made or repaired for own use
word-duty-use = Use
word-duty-alone = Shop with no employee
word-case-act = The safety act
word-case-pei = Prince Edward Island
word-case-prairies = Saskatchewan and Manitoba
word-case-loler = Lifting regulations
word-case-self = Your own business
word-case-insured = If you are insured
word-case-covers = Who is covered
word-case-employer = Who is an employer
word-case-each = Each item
word-case-full = Full inspection
word-case-life = For its whole life
word-case-first = First inspection
