# The page of a job, made from the answers of several worksheets. These words go with calc into the page.

job-lift = Lift sheet
job-pull = Pull record
job-load = Load sheet
## The parts of a page

slot-weight = Weight and balance
slot-rigging = Rigging
slot-parts = Parts
slot-pull = The pull
slot-log = What the log says
slot-load = What holds the load

job-plan = Plan
job-careful = Plan, with care
# Of a pull whose log is there.
job-record = Record
job-not-a-plan = Not a plan
job-nothing = Nothing was typed in these worksheets yet, in this window. Fill them in this order, then come back:
job-why-not = This page is no plan, and it must not be used as one. The reasons:
# The part of the page that a reason is about, then the reason.
job-where = { $slot }:
job-page = Page { $page } of { $pages }. Tables and code { $hash }.
job-parts-on = The { $count } parts stand on page { $page }.
job-parts-on-pages = The { $count } parts stand on pages { $page } to { $pages }.
job-parts-go-on = Parts, continued
job-worked-out-from = Worked out from
job-cautions = Keep in mind
job-rests-on = Figures from: { $sources }. The worksheets name the places.

## The table of parts

part-number = Number or name
part-mark = What it is, mark
part-looked = Last inspection
part-rating = May carry here
part-pull = Pull on it
part-used = Used
# What stands between the kind, the size and the grade of a part.
part-what = { $kind }{ $size ->
        [absent] { "" }
       *[other] , { $size }
    }{ $grade ->
        [absent] { "" }
       *[other] , mark { $grade }
    }

## Lines to be filled in by hand

by-hand-what = What and where
by-hand-by = Done by
by-hand-checked = Checked by
by-hand-date = Date
by-hand-log = Readings
log-column-stage = Stage
log-column-force = Force
log-column-gap = Gap
log-column-time = Time

## What to look at before it begins. 29 CFR 1910.184(c) for slings, and common practice.

before-lift = Before the hook goes up
    .straight = The hook stands straight above the center of gravity.
    .looked = You looked at each part of the list today. Each carries the mark that stands here.
    .pins = Shackle pins are in to the end. Hook latches are shut.
    .legs = No leg is twisted, knotted or on a bare edge. Pads are in place.
    .support = What the hook hangs from is rated for the load with its rigging.
    .clear = The way and the place to set it down are clear. Nobody stands or reaches under it.
    .hands = No hand is between sling and load. One person gives the signals.
    .inch = Lift it one inch, stop, and look at every part and at how it hangs.
before-pull = Before the pull
    .measured = Every throat and gap is measured, and written down.
    .barrier = The barrier stands, and nobody is inside it or in line with the pull.
    .gauge = The gauge reads zero when slack, and you can read it from a distance.
    .release = You tried how the pull is released.
    .stop = You know the highest reading, and who says stop.
before-load = Before you drive
    .looked = You looked at each chain, strap, binder and anchor point today.
    .tight = Every tie-down is tight, and each binder is locked.
    .edges = Nothing lies on a bare edge or is twisted. Loose ends are tied up.
    .deck = The deck is clean and dry. Nothing loose lies on it.
    .parts = Booms, buckets, ramps and doors are down and tied.

## Why a page is a plan, or none. Each is a whole sentence.

reason-sheet-within =
    .headline = “{ $sheet }” says that it is within the rating.
reason-sheet-careful =
    .headline = “{ $sheet }” says: careful.
reason-sheet-stop =
    .headline = “{ $sheet }” says: stop.
reason-sheet-unknown =
    .headline = “{ $sheet }” cannot be rated.
reason-sheet-refused =
    .headline = “{ $sheet }” has boxes that are empty or not understood.
reason-jobs-differ =
    .headline = The worksheets are named after more than one job: { $names }. Clear those of another job, or give all of them one name.
reason-job-not-named =
    .headline = “{ $sheet }” does not say that it is of the job “{ $name }”. Give it the same name, or clear it.
reason-own-part-now-stop =
    .headline = My kit says of { $number }: do not use it.
reason-own-part-now-unknown =
    .headline = My kit says that { $number } cannot be rated.
reason-own-part-now-caution =
    .headline = My kit says of { $number }: careful. Look there before you use it.
reason-units-differ =
    .headline = The worksheets were filled in with two orders of units. Open each, choose the same units, and come back.
reason-nothing-of-weight =
    .headline = Weight and balance were not worked out.
reason-nothing-of-rigging =
    .headline = The pull in the legs was not worked out.
reason-nothing-of-parts =
    .headline = The parts between the hook and the load were not listed.
reason-nothing-of-pull =
    .headline = The pull was not worked out.
reason-nothing-of-load =
    .headline = The tie-downs were not worked out.
reason-rigging-too-light =
    .headline = The rigging was worked out for { $worked }, and the load may weigh { $weighs }.
reason-rigging-of-another-load =
    .headline = The rigging was worked out for { $worked }, and the load weighs { $weighs } at most. They are hardly the same load. Clear the worksheet that is of another job.
reason-parts-too-light =
    .headline = The parts were worked out for { $worked }, and the load may weigh { $weighs }.
reason-parts-of-another-load =
    .headline = The parts were worked out for { $worked }, and the load weighs { $weighs } at most. They are hardly the same load. Clear the worksheet that is of another job.
reason-balance-not-known =
    .headline = The center of gravity was not worked out. Nobody knows yet how the load will hang. Lift it one inch, stop, and set it down again if it tips.
reason-legs-not-listed =
    .headline = No part of the list works in more than one leg, so the legs of the sling are missing there.
reason-legs-pull-harder =
    .headline = The rigging pulls { $rigging } in a leg, and the list of parts counts { $parts }. Give the legs in the list the same number and angle.
reason-pulled-too-hard =
    .headline = The log reached { $pulled }, and the highest force that you may use is { $most }. Take out of use what was pulled harder.
