# What every inspection says.

ok = Inside every limit

input-part_name = Part, serial or tag number
    .help = The record is about this one part.
input-place = Where it is used
    .help = It decides when the next full inspection (periodic inspection) is due. If your place is not here, leave it empty: the shortest interval is used.
option-place-us-federal = United States, federal rules
option-place-us-washington = Washington
option-place-us-california = California
option-place-us-michigan = Michigan
option-place-canada-ontario = Ontario
option-place-uk = United Kingdom
option-place-germany = Germany
option-place-australia = Australia
input-service = Service
    .help = It decides when the next full inspection is due. If you leave it empty, the shortest interval is used.
option-service-normal = Normal: now and then, within the rating
option-service-severe = Severe: daily, dirty, hot or near the rating
option-service-special = Special: anything else
input-inspected_on = Date of this inspection
    .help = Such as 2026-01-17, or today.
input-inspected_by = Inspected by

result-looked_at = Looked at
result-record = The record
looked-at = { $done } of { $all }
record-complete = complete, for the inspection of { $day }
record-lacks = not complete. Still missing: { $lacking }
record-part-name = the name or serial number of the part
record-inspected-on = the date
record-inspected-by = the name of the inspector
record-looks = { $count ->
        [one] { $count } look
       *[other] { $count } looks
    } at the part
result-decides = What decides
result-next_inspection = Next full inspection
result-criteria = Each criterion
column-criteria-criterion = Criterion
column-criteria-limit = Limit
column-criteria-reading = Reading
column-criteria-outcome = Outcome
column-criteria-source = Source
row-criteria = { $criterion }: limit { $limit }; found { $reading }; { $state ->
        [fail] { outcome-fail }
        [near] { outcome-near }
        [pass] { outcome-pass }
       *[open] { outcome-open }
    }

## The headline and the cautions

reason-out =
    .headline = Remove this { $part } from service: { $failed }.
    .caution = Do not use this { $part } again, not even for a light load. Cut it through or crush it, so that nobody takes it from the bin and uses it.
reason-still-to-look-at =
    .headline = This { $part } cannot be passed yet. Still to look at: { $left }.
    .caution = Do not use this { $part } until every question is answered. Hang a tag on it that says so.
reason-near-a-limit =
    .headline = This { $part } is inside every limit, but more than halfway to one: { $near }.
    .caution = A worn part wears faster. Measure again soon and write the reading down.
reason-inside-every-limit =
    .headline = This { $part } is inside every limit that was checked. Its mark or tag gives its working load limit.
reason-no-day =
    .headline = This { $part } cannot be passed yet: the date of this inspection is missing.
    .caution = Give the day of this inspection. The next one is counted from it.
reason-overdue =
    .headline = This { $part } cannot be passed: its next full inspection was due by { $date }.
    .caution = Inspect the whole { $part } again today, before you use it.
reason-shortest-interval =
    .caution = You have not given both place and service, so the shortest interval is used.
reason-no-record-yet =
    .caution = This is not a record yet. Still to write down: { $lacking }.
reason-never-mend =
    .caution = Never weld, heat, grind, drill or straighten it. No measurement here gives an altered part its rating back. Only its maker can say what to do with it.
reason-crack-too-fine =
    .caution = A crack can be too fine to see. Clean the part and light it from the side. If you are in doubt, have a qualified person test it. Where the maker gives limits, use those.

## The large line

decides-out = Out of service: { $named }{ and-more }
decides-look-at = Look at { $named }{ and-more }
decides-no-day = Give the date of this inspection
decides-near = Near its limit: { $named }{ and-more }
decides-all-looked-at = All { $count } looked at
and-more = { $more ->
        [0] { "" }
       *[other] { " " }and { $more } more
    }

## What was seen of a fault that is looked for

in-order = in order
not-in-order = not in order

## Outcomes

outcome-pass = pass
outcome-near = near
outcome-fail = fail
outcome-open = not looked at
outcome-pass-looser = pass; looser limit
outcome-near-looser = near; looser limit
outcome-fail-looser = fail; looser limit
outcome-open-looser = not looked at; looser limit
absent-not-measured = not measured
absent-not-counted = not counted
absent-not-looked-at = not looked at
absent-out-of-use = none: out of service
absent-until-answered = none until every question is answered and passes

## The working

step-criterion = { $criterion }
    .formula = limit { $limit } ({ $source })
    .numbers = found { $reading }
    .result = { $outcome }{ $decides ->
            [decides] , decides
           *[does-not-decide] { "" }
        }
decides = decides
does-not-decide = does not decide

## When next

next-by = by { $date }{ $sooner }
next-was-due = Overdue: it was due by { $date }
next-within = within { $months ->
        [one] a month
       *[other] { $months } months
    } of this inspection{ $sooner }
or-sooner = { "" }, or sooner as a qualified person says
no-sooner = { "" }
refused-before-1980 = is before 1980. Give the day of this inspection.
