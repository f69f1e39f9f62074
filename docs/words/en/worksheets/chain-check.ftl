# Worksheet chain-check.

title = Is this chain still fit?
summary = Wear, stretch and damage held against every published limit; the strictest decides.
story = The two-leg chain sling that lifts the yard's keels, at its yearly look-over.

## What is asked

input-grade = Grade mark
    .help = As stamped on the links.
option-grade-80 = Grade 80
option-grade-100 = Grade 100
option-grade-70 = Grade 70
option-grade-43 = Grade 43
option-grade-30 = Grade 30
option-grade-8 = Grade 8
option-grade-5 = Grade 5
option-grade-4 = Grade 4
option-grade-unmarked = No readable mark
input-size = Size
    .help = Such as 3/8 or 10 mm, from the tag or the marks.
input-use = Used to
option-use-lift = Lift
option-use-tie_down = Tie loads down
input-thickness_now = Thinnest reading of the wire
    .help = Where links bear on each other, at the end of the link. Turn the caliper; take the smallest of all links.
input-reach_new = Length when new, over some links
    .help = From the tag, or over the same number of links in an unused part.
input-reach_now = Length now, over the same links
    .help = Pulled straight, from bearing to bearing. Measure the worst five links too.
input-links = Number of links in that length
input-damage = Damage found
    .help = none, or some of: crack, nick, gouge, bent, twist, stretched, heat, weld, spatter, pitting, stiff, homemade. Look at every link, twice.
input-tag_readable = Can you read the sling's tag?

## What is found

result-wear = Wire worn by
result-min_thickness = Thickness at which it is out
result-loosest_min_thickness = The loosest published limit
result-stretch_percent = Stretched by
result-pitch_now = Inside length of a link now
result-rating_if_sound = Printed rating of one straight leg, if sound

## What it is judged by

part-chain = chain
criterion-worn-thin = Worn thin
    .listed = worn thin
    .look-at = the thinnest link
criterion-over-stretched = Stretched
    .listed = stretched
    .look-at = the stretch
criterion-damage = Damage
    .listed = damage
    .look-at = damage, link by link
    .limit = none on any link
criterion-crack = Crack
    .listed = crack
    .limit = none on any link
criterion-nick = Nick
    .listed = nick
    .limit = none on any link
criterion-gouge = Gouge
    .listed = gouge
    .limit = none on any link
criterion-bent = Bent link
    .listed = bent link
    .limit = none on any link
criterion-twist = Twisted link
    .listed = twisted link
    .limit = none on any link
criterion-stretched = Stretched link
    .listed = stretched link
    .limit = none on any link
criterion-heat = Heat colour or burn
    .listed = heat colour or burn
    .limit = none on any link
criterion-weld = Weld or mend
    .listed = weld or mend
    .limit = none on any link
criterion-spatter = Weld spatter or arc strike
    .listed = weld spatter or arc strike
    .limit = none on any link
criterion-pitting = Pitting or deep rust
    .listed = pitting or deep rust
    .limit = none on any link
criterion-stiff = Links that do not hinge
    .listed = links that do not hinge
    .limit = none on any link
criterion-homemade = Bolt, wire or shop-made link
    .listed = bolt, wire or shop-made link
    .limit = none on any link
criterion-no-tag = No readable tag
    .listed = no readable tag
    .look-at = the tag
    .limit = a tag you can read
limit-of-wear = { $limit } of wear
limit-of-thickness = { $limit } of the thickness

## The use

reason-no-lifting-use =
    .opening = Stop: { $why }.
    .caution = Only chain that is marked and tagged for lifting lifts: grade 80 or 100, or European 4, 5 or 8.
reason-no-limit-in-law =
    .closing = The law's table has no limit for this grade and size: the maker's mark governs.
reason-no-table-rates =
    .closing = No table rates this grade and size: its tag governs.
reason-printed-rating =
    .closing = Printed rating if sound: { $rating_if_sound }.
reason-counts-as-grade-30 =
    .caution = Unmarked chain counts as grade 30 in the United States (49 CFR 393.108(d)) when it ties a load down. In Canada it counts as nothing.
absent-no-lifting-use = no lifting use: grade { $grade }
absent-no-lifting-use-unmarked = no lifting use: unmarked
absent-no-limit-in-law = the law's table has no limit for this grade and size: the maker's mark governs
absent-no-table-rates = no table rates this grade and size: its tag governs

## Refusals

refused-not-on-the-list = has “{ $word }”, which is not on the list. Give none, or some of: { $known }.
refused-not-a-size = is not a size of the tables. Give one of: { $known }.
refused-thicker-than-made = is thicker than { $size } chain is made. Check the size and where you measured.
refused-links-do-not-go-with-length = does not go with that length and size. Count the links between the two points you measured, and measure from the inside of the first bearing to the inside of the last.
refused-reach-now-smaller-than-new = is shorter than the new length. Measure over the same number of links, pulled straight.

label-new-wire = new { $wire }
