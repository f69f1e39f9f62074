# Worksheet chain-check.

title = Is this chain still fit?
summary = Checks wear, stretch and damage against every published limit (removal criteria). The strictest decides.
story = The yard makes the yearly inspection of the two-leg chain sling that lifts its keels.

## What is asked

input-grade = Grade mark
    .help = As stamped on the links. A mark of 4 alone may mean grade 43, which never lifts; European grade 4 is marked M.
option-grade-80 = Grade 80
option-grade-100 = Grade 100
option-grade-70 = Grade 70
option-grade-43 = Grade 43
option-grade-30 = Grade 30
option-grade-8 = Grade 8
option-grade-5 = Grade 5
option-grade-M = European grade 4 (M)
option-grade-unmarked = No readable mark
input-size = Size
    .help = Such as 3/8 or 10 mm, from the tag or the marks.
input-use = Used to
option-use-lift = Lift
option-use-tie_down = Tie loads down
input-thickness_now = Thinnest reading of the wire
    .help = Measure at the end of the link, where links bear on each other. Turn the caliper and give the smallest reading of all links.
input-reach_new = Length when new, over some links
    .help = From the tag, or over the same number of links in an unused part.
input-reach_now = Length now, over the same links
    .help = Pull it straight and measure from bearing to bearing. Measure the worst five links too.
input-links = Number of links in that length
input-cracks = Any crack, nick or gouge?
    .help = Clean it first. Look at every link, twice.
input-bent_links = Any bent or twisted link?
input-stretched_links = Any link that looks longer than its neighbors?
input-heat = Any heat color or burn?
input-welds = Any weld, mend, weld spatter or arc strike?
input-pits = Any deep pit or deep rust?
input-stiff_links = Any link that does not hinge freely?
input-homemade_links = Any bolt, wire or shop-made link in it?
input-damage = Damage found, as a list
    .help = none, or some of: crack, nick, gouge, bent, twist, stretched, heat, weld, spatter, pitting, stiff, homemade.
input-tag_readable = Can you read the sling's tag?

## What is found

result-wear = Wire worn by
result-min_thickness = Thickness limit
result-loosest_min_thickness = The least strict published thickness limit
result-stretch_percent = Stretched by
result-pitch_now = Inside length of a link now
result-rating_if_sound = Printed rating of one straight leg, if sound

## What it is judged by

part-chain = chain
criterion-worn-thin = Wire worn thin
    .listed = wire worn thin
    .look-at = the thinnest link
criterion-over-stretched = Chain stretched
    .listed = chain stretched
    .look-at = the stretch
criterion-cracks = Crack, nick or gouge
    .listed = crack, nick or gouge
    .look-at = any crack, nick or gouge
    .limit = none on any link
criterion-bent-links = Bent or twisted link
    .listed = bent or twisted link
    .look-at = any bent link
    .limit = none on any link
criterion-stretched-links = Stretched link
    .listed = stretched link
    .look-at = any stretched link
    .limit = none on any link
criterion-heat = Heat color or burn
    .listed = heat color or burn
    .look-at = any heat color
    .limit = none on any link
criterion-welds = Weld, mend or spatter
    .listed = weld, mend or spatter
    .look-at = any weld or spatter
    .limit = none on any link
criterion-pits = Deep pit or rust
    .listed = deep pit or rust
    .look-at = any deep pit or rust
    .limit = none on any link
criterion-stiff-links = Link that does not hinge
    .listed = link that does not hinge
    .look-at = any stiff link
    .limit = none on any link
criterion-homemade-links = Bolt, wire or shop-made link
    .listed = bolt, wire or shop-made link
    .look-at = any shop-made link
    .limit = none on any link
criterion-no-tag = No readable tag
    .listed = no readable tag
    .look-at = the tag
    .limit = a tag you can read
limit-of-wear = { $limit } of wear
limit-of-thickness = { $limit } of the thickness

## The use

reason-no-lifting-use =
    .opening = Do not lift with this chain: { $why }.
    .caution = Lift only with chain that is marked and tagged for lifting: grade 80 or 100, or European grade 4, 5 or 8.
reason-no-limit-in-law =
    .closing = The law's table has no limit for this grade and size. Go by the maker's mark.
reason-no-table-rates =
    .closing = No table rates this grade and size. Go by its tag.
reason-printed-rating =
    .closing = Printed rating if sound: { $rating_if_sound }.
reason-counts-as-grade-30 =
    .caution = In the United States unmarked tie-down chain counts as grade 30 (49 CFR 393.108(d)). In Canada it counts as nothing.
absent-no-lifting-use = chain of grade { $grade } may not lift
absent-no-lifting-use-unmarked = unmarked chain may not lift
absent-no-limit-in-law = the law's table has no limit for this grade and size: go by the maker's mark
absent-no-table-rates = no table rates this grade and size: go by its tag

## Refusals

refused-not-on-the-list = has “{ $word }”, which is not on the list. Give none, or some of: { $known }.
refused-none-and-some = says none and names damage as well. Give one or the other.
refused-list-against-answer = does not agree with the answer to “{ $question }” Correct one of the two.
refused-not-a-size = is not a size of the tables. Give one of: { $known }.
refused-thicker-than-made = is thicker than { $size } chain is made. Check the size and where you measured.
refused-links-do-not-go-with-length = does not go with that length and size. Count the links between the two points you measured, and measure from the inside of the first bearing to the inside of the last. If both are right, it is not lifting chain of that size, or it has stretched past every limit.
refused-reach-now-smaller-than-new = is shorter than the new length. Measure over the same number of links, pulled straight.

label-new-wire = new { $wire }
