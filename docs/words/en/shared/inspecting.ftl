# What every inspection says.

ok = Inside every limit

input-service = Service
    .help = Sets when it must be looked over again.
option-service-normal = Normal: now and then, inside the rating
option-service-severe = Severe: daily, dirty, hot or near the rating
option-service-special = Special: anything else
input-inspected_on = Date of this inspection
    .help = Year-month-day, such as 2026-11-24.

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
    .headline = Take this { $part } out of use: { $failed }.
    .caution = Do not use this { $part } again, not for a light load. Cut it through or crush it, so that nobody takes it back from the bin.
reason-still-to-look-at =
    .headline = This { $part } cannot be passed yet. Still to look at: { $left }.
    .caution = Until every line is answered this { $part } is out of use. Hang a tag on it that says so.
reason-near-a-limit =
    .headline = This { $part } is inside every limit, but over halfway there: { $near }.
    .caution = Wear goes faster as it goes on. Measure again soon and write the reading down.
reason-inside-every-limit =
    .headline = This { $part } is inside every limit that was checked. Its tag says what it may carry.
reason-never-mend =
    .caution = Never weld, heat, grind, bend back or drill it. No measurement here brings altered hardware back; only its maker can.
reason-crack-too-fine =
    .caution = A crack can be too fine to see. Clean it, light it from the side; if in doubt have it tested by a qualified person. The maker's limits govern over these.

## The large line

decides-out = Out: { $named }{ and-more }
decides-look-at = Look at { $named }{ and-more }
decides-near = Near its limit: { $named }{ and-more }
decides-all-looked-at = All { $count } looked at
and-more = { $more ->
        [0] { "" }
       *[other] { " " }and { $more } more
    }

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
absent-out-of-use = none: out of use
absent-until-answered = none until every line is answered and passes

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

next-by = by { $date }
next-within = within { $months } months
next-as-qualified-person-says = as a qualified person says
refused-not-a-date = is not a date that can be read. Give year-month-day, such as 2026-11-24.
