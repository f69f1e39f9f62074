# The parts of the book, the groups in them, the lists of pages, of ratings and of sources.

part-look-up = Look something up
    .lede = Ratings, limits and sizes, each with its source.
    .door = Look up
part-work-out = Work something out
    .lede = Put in what you measured. See the answer, the drawing and the working.
    .door = Work out
part-judge = Judge a part
    .lede = Is it still fit for use? What to look for, what to measure, when to stop.
    .door = Judge a part
part-understand = Understand
    .lede = Why it is so, with drawings and numbers you can check.
    .door = Understand
part-about = How far to trust this book
    .lede = What it rests on, what it cannot know, and what governs over it.
    .door = About this book

## Groups of tables and of sources

group-chain = Chain
group-hooks-shackles = Hooks, shackles and fittings
group-slings = Slings and rope
group-rules = Rules
group-inspection = Judging a part
group-heat = Heat
group-weights = Weights and materials
group-tie-down = Tie-down
group-sources = Sources
group-proof = Proof and design factors
group-steel = Steel
group-worksheets-only = Worksheets only
group-explaining = Explaining pages only
group-reading-on = For reading on

## Groups of worksheets

room-lifting = Lifting
room-pulling = Pulling and proving
room-hauling = Hauling
room-inspecting = Judging a part
room-heating = Heat
room-records = Records and units
worksheets-that-judge = Worksheets that judge

## Every rating

every-rating = Every rating in one list
    .lede = Each line leads to its cell, with its source. The mark or tag on your part governs.
    .description = All ratings of this book as a plain list.
    .jump = Ratings by table
    .count = { $count } { $count ->
        [one] rating
       *[other] ratings
    }

## Sources

sources = Where does each figure come from?
    .lede = { $values } values of the tables come from { $sources } sources. Tap a value on its page to see the place in its source.
    .description = Every source, what was taken from it and how it was read.
    .text = read in the source's own text
    .copy = read in a reprint: another publication prints the same table, and that one was read
    .memory = not seen in text: recalled, and kept only where a rule that the table must obey holds it and a test checks that rule (a steady design factor, strength with the square of size, pounds against kilograms)
    .jump = Sources by what was taken from them
    .order = A source stands under the subject that most was taken from it for. Open it to see what, and how it was read.
    .how-read = How it was read:
    .terms = Terms:
    .worksheets = worksheets
    .worksheet = worksheet
    .reading-on = for reading on
    .explaining = explaining pages
    .explains = explained
source-count = { $count } { $count ->
        [one] source
       *[other] sources
    }
value-count = { $count } { $count ->
        [one] value
       *[other] values
    }
counted-text = { $count } read in text
counted-copy = { $count } in a reprint
counted-memory = { $count } not seen in text

## The shelves of the look-up index, in the order of use

shelf-chain = Chain
shelf-hardware = Shackles, hooks and fittings
shelf-slings = Slings and rope
shelf-tie-down = Tie-down
shelf-heat = Heat and cold
shelf-inspection = Inspection, marks and repair
shelf-weights = Weights, sizes and bolts
shelf-behind = Numbers behind the worksheets
    .lede = The worksheets work with these figures. You will seldom need to look one up by itself.
    .description = Steel, welding, proof loads and design factors: the figures that the worksheets work with.
shelf-more = More
