# Words that several tables share. A table's own file may say the same key in its own words.

## What the figures of a table may be used for

use-lift = For lifting
    .status = Lifting limit (WLL)
    .short = For lifting.
use-lifting_gear = About lifting gear. No rating stands in this table.
    .short = About lifting gear. No rating stands in this table.
use-tie_down = For tying down only. Never for lifting.
    .short = For tying down only, never lifting.
use-neither = Neither for lifting nor for tying down: a table to judge or reckon by.
    .short = Not for lifting.
use-reckon = To reckon by. No rating stands in this table.
    .short = To reckon by. No rating stands in this table.
use-mixed = Read in each row if it lifts or ties down
    .short = Lifting and tie-down stand apart: read the row.

## How keys read

key-any = any
key-grade = Grade { $grade }
key-angle-from-vertical = { $angle } from the vertical
key-angle-from-horizontal = { $angle } from the horizontal
key-to = { $low } to { $high }
key-from = from { $low }
key-up-to = up to { $high }
# Above a column of words, such as rules.
value-in-words = What it says

## Read before you use it

note-mark-governs = The mark or tag on the part governs. Use this table only where the mark is readable and names the grade.
note-bend-and-end-do-not-multiply = Bend and end fitting do not multiply: the larger factor governs.
note-at-least = At least.

## Cautions; table.toml says of which kind each is

caution-tie-down-is-not-lifting = A tie-down rating is not a lifting rating. Grade 30, 43 and 70 chain has none.
caution-stiff-load-counts-two = Three and four legs share as printed only where the load gives or the legs are leveled. A stiff load can hang on two of them: count two.
caution-altered-has-no-rating = Welded, heated, bent, stretched or home-made hardware has no rating. Take it out of use.

## Columns

column-grade = Grade
    .help = Grade number as marked on the part.
column-size_in = Size
    .help = Nominal size in inches as shops write it: 3/8, 1-1/4.
column-size_mm = Size
    .help = Nominal metric size.
column-quantity = Quantity
    .help = What the value is.
column-value = Value
    .help = The source's own figure, as it prints it.
column-unit = Unit
    .help = Unit of the value; "text" where the value is words.
column-source = Source
    .help = Key of a row in sources.csv.
column-locator = Where in the source
    .help = Table, section or paragraph.
column-checked = How seen
    .help = text: read in the source itself; copy: read where another publication reprints it; memory: not seen in text, held by a tested law.
column-note = Note
    .help = What else a reader must know about this row.
column-legs = Legs
    .help = Legs of the sling.
column-item = Part
    .help = What the rule is about.
column-rule = Rule
    .help = Short name of the rule.
column-default = Our default
    .help = yes on the strictest figure, which is the one used by the worksheets.
column-angle_from_vertical = Leg angle from vertical
    .help = Band of the angle between a leg and the vertical.
column-sense = A reading at the limit
    .help = out_at: a part whose reading stands at the limit is out; out_over: only one that goes over it is, because the source says more than this.
column-termination = End fitting
    .help = Kind of end.
column-temperature_from_degC = From
    .help = Lower end of the band.
    .range = Temperature
column-temperature_to_degC = To
    .help = Upper end of the band.
column-process = Process
    .help = Welding process.

## Quantities

quantity-working_load_limit = Working load limit
quantity-minimum_breaking_force = Minimum breaking force
quantity-rule = Rule
quantity-remaining = Remaining
quantity-tensile_strength = Tensile strength
quantity-temperature = Temperature

## Words of the columns

word-legs-1 = 1 leg
word-legs-2 = 2 legs
word-legs-3-4 = 3 or 4 legs
word-item-hook = Hook
word-rule-what-it-is = What it is
word-hitch-straight = Straight
word-item-alloy_chain = Alloy chain
word-rule-never-anneal = Never anneal
word-rule-no-makeshift-link = No makeshift link
word-item-chain = Chain
word-item-pin = Pin
word-item-sling = Sling
word-item-web_sling = Web sling
word-item-shackle = Shackle
word-rule-no-weld = No weld
word-item-eyebolt = Eyebolt
word-item-turnbuckle = Turnbuckle
word-termination-steel_ferrule = Steel ferrule
word-termination-aluminium_ferrule = Aluminum ferrule
word-hitch-basket = Basket
word-item-alloy_chain_sling = Alloy chain sling
word-item-wire_rope_sling = Wire rope sling
word-item-metal_mesh_sling = Metal mesh sling
word-item-clip_termination = Clip termination
word-item-rigging_hardware = Rigging hardware
word-item-chain_sling = Chain sling
word-rule-interval = Interval

## Charts

chart-dots = The dots are the printed values.
chart-steps = Each value holds from the step before it up to its dot; past the last dot the chain is not used.
chart-in-words = Its figures in words
chart-asme = Grade { $grade }, ASME
chart-en = Grade { $grade }, EN
chart-to = to { $celsius } °C
chart-at = at { $celsius } °C
