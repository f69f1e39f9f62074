# Words of a worksheet's form and of the parts around its answer, as the built page has them.

no-script = Scripts are off or did not load, so nothing here works out your own numbers. The answer shown is that of the example, whose numbers are printed with it.
# The versions stand in build_scripts/browsers.json.
old-browser = This browser is too old for the calculator, so nothing here works out your own numbers. The answer shown is that of the example, whose numbers are printed with it. The calculator runs in Chrome, Edge and other Chromium browsers from version { $chromium }, in Firefox from { $firefox }, and in Safari from { $safari }.

## The boxes

units = Units
units-us = US: in, lb
    .short = lb, in
units-si = SI: mm, kg
    .short = kg, mm
# The samples that follow are written as a shop types them.
typing = Type it as you read it:
typing-bare-number = A bare number takes the unit beside the box.
optional = optional
# The hint in an empty box.
such-as = such as { $sample }
show-example = Show the example
the-example = The example in words
what-it-does = What this works out
clear = Clear all boxes
not-given = not given
flag-yes = Yes
flag-no = No
flag-not-looked-at = Not looked at
row-add = Add one more
own-part-pick = From my kit
own-part-find = Search your kit
row-take-out = Take this one out
row-open = Open its boxes
row-fold = Fold its boxes

## Around the answer

answer = Answer
all-the-numbers = All the numbers
worked-out-from = Worked out from
answer-edition = Worked out with edition { $number }, tables and code { $hash }.
# Stands until the calculator runs, and for good where it does not load.
not-started = No answer. The calculator has not started, so your numbers are NOT worked out. If this stays, reload the page or try another browser. The tables of this book work without it.
# After the calculator failed.
try-again = Try again
tables-instead = Look it up in the tables
the-working = The working
rests-on = What it rests on
signed = Signed
date = Date
load = Load

## The record of an inspection

record = The record
record-how = One page, with every criterion, its source and the next date. Keep it with the part's papers.
record-print = Print the record
record-save = Save it to my kit
record-of-example = This is the example. It is no record of any part.
record-next = Next full inspection
record-signature = Signature

## The page of a job

# Where a worksheet leads to the page of its job.
job-link-lift = One page to print: the lift sheet
job-link-pull = One page to print: the pull record
job-link-load = One page to print: the load sheet
