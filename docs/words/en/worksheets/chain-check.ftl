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
