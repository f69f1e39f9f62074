# Worksheet trial-log.

title = Did the part hold? What does my log say?
summary = Stiffness, where the line bends, permanent set, bleed-down and throat, from force and gap readings.
story = The yard reads the log of the pull on its mooring hook. A dial stood across two punch marks, and the gauge was filmed from behind the barrier.

## What is asked

input-part = The part that was pulled
option-part-hook = A hook, or another part with a throat
option-part-no-throat = A part without a throat, such as a link or a frame
input-kept_as = Your log
option-kept_as-pasted = Paste it
option-kept_as-readings = Type it
option-kept_as-file = Open a file
input-pasted = The log, pasted
    .help = Straight from a spreadsheet, in the order taken, with headings: force, gap, throat, time. Say the units there: Force (lb). Without, they are lb, in and s, or kN, mm and s. Seat the part first with a light pull. Read the gap three times before the pull and three times after it, at the same small force.
input-readings = Readings, in the order taken
    .help = Seat the part first with a light pull. Read before the pull, on the way up, in the hold, and after letting off at the same small force as before; three times each is better than once.
    .row = Reading
input-readings-force = Force
input-readings-gap = Gap
    .help = Between two marks across the part, or the dial's reading.
input-readings-throat = Throat
input-readings-time = Time
input-file = The log as a file
    .help = Text with columns force, gap, throat, time; units may be in the headings. From a spreadsheet save it as CSV, or paste it.

## What is found

result-departs_at = Left the straight line at
result-departs_low = At the earliest (95%)
result-departs_high = At the latest (95%)
result-top_force = Highest force
result-permanent_set = Permanent set
result-set_doubt = Give or take, at 95%
result-set_shown = Smallest set these readings would show
result-throat_change_percent = Throat opened by
result-bleed_down = Force lost while holding
result-stiffness = Stiffness of the straight part
result-scatter = Scatter of a gap reading
result-readings_used = Readings in the fit
result-readings_aside = Readings set aside
result-proves = What a pass proves
result-does_not_prove = What it does not

## The headline and the cautions

reason-throat-near-limit =
    .caution = The throat has opened close to its limit.
reason-yielded =
    .headline = Remove the part from service, because it yielded: { $signs }.
    .caution = Do not pull on the part again and do not bend it back. Destroy it.
reason-set-aside =
    .caution = Some readings were left out as misread, because they differ from both neighbors: at { $forces }. Look at them yourself.
reason-nothing-read-after =
    .headline = As far as the readings can tell, the gap grew in a straight line up to { $top_force }. Nothing was read after the pull was released, so nobody knows whether it came back.
    .caution = Read force and gap again after you release the pull. Without that nobody knows whether it came back.
reason-nothing-read-before =
    .headline = As far as the readings can tell, the gap grew in a straight line up to { $top_force }. The gap after letting off was read at a force at which it was not read before, so nobody knows whether it came back.
    .caution = Read the gap at the same small force before the pull and after it.
reason-set-not-shown =
    .headline = These readings could not show a permanent set under { $shown }, so nobody can say that the part came back.
    .caution = Read the gap three times before the pull and three times after it, at the same small force, with a finer dial.
reason-came-back-smaller =
    .headline = The gap came back smaller than it was. A pull does not do that to steel. The dial slipped, or a mark moved.
    .caution = Fix the dial, seat the part with a light pull, and start a new log.
reason-straight-and-back =
    .opening = As far as the readings can tell, the gap grew in a straight line up to { $top_force } and came back. They would show a permanent set over { $shown }.
    .headline = The part held this pull once. That gives it no rating.
reason-slack =
    .caution = Up to { $slack } the part was taking up slack. Those readings are left out of the straight line.
reason-throat-not-read =
    .headline = The throat was not read before and after, so nobody knows whether it opened.
    .caution = Read the throat before and after with a caliper, at slack.
reason-throat-shrank =
    .headline = The throat reads { $shrank } smaller than before. A pull does not close a hook: one of the readings is wrong.
    .caution = Read the throat again between the same two marks.
reason-bleeds =
    .caution = The line lost more than a hundredth of the force in a minute. Either the pump leaks or a part stretches slowly. Shut off the ram to see which.
reason-what-it-proves =
    .caution = { proves } { does-not-prove }

sign-bend = it left the straight line at { $at }, between { OWN($low, digits: 3) } and { OWN($high, digits: 3) }
sign-set = it stayed open by { $set }, give or take { OWN($doubt, digits: 2) } (permanent set)
sign-throat = the throat opened { $growth }

## The working

step-stiffness = Stiffness of the straight part
    .formula = 1 / median of all slopes of gap on force
    .numbers = { $readings_used } readings
    .result = { $stiffness }
step-scatter = Scatter of a gap reading
    .formula = standard deviation about the straight line, at least the smallest step over √12
    .numbers = { $freedom } degrees of freedom
    .result = { $scatter }
step-break = Test for a break
    .formula = Student's t one-sided; a break counts under { $level } after the number of places tried
    .numbers = t = { $t }, { $places } places
    .result = chance { $chance }
step-set = Permanent set
    .formula = gap after letting off − gap on the first rise at the same force; Student's t one-sided at { $level }
    .numbers = { $freedom } degrees of freedom; counts over { OWN($decides) }, surely shown over { OWN($shown) }
    .result = { $permanent_set }
step-bleed = Force lost while holding
    .formula = median of slopes of force on time
    .result = { $bleed_down }
step-throat = Throat
    .formula = last / first − 1; limit { $limit }
    .result = { $throat_change_percent }

## Why a result is absent

absent-nowhere-seen = nowhere seen
absent-nothing-after = no reading after letting off
absent-nothing-before = no reading before the pull at that force
absent-no-times = no times in the hold
absent-not-read-twice = not read twice

## Refusals

refused-pasted-missing = is missing. Paste the log here, with its headings: force, gap, throat, time. (The address of this page keeps only short logs.)
refused-readings-missing = are missing. Type the log row by row.
refused-file-missing = is missing. Choose the file of the log.
refused-not-a-log = { $reason }. Give columns force, gap, throat, time with their units.
refused-no-force = has no force over zero. Give the pull as it rose.
refused-too-few-readings = has { $useful ->
        [0] no useful reading
        [one] 1 useful reading
       *[other] { $useful } useful readings
    } on the way up. Give at least { $fewest } with force and gap, at four different forces or more; ten are better.
refused-no-growth = shows no gap that grows with the force. Check which column is which, and the dial's sign.
refused-no-growth-before-the-bend = shows no gap that grows with the force before it bends. Was the dial stuck, or was slack taken up? Leave the slack readings out, free the dial, and read again.

log-cell-unreadable = line { $line }, { $column }: “{ $typed }” { $reason }
log-heading-word = line { $line }: in the heading “{ $heading }” the word “{ $word }” is not understood. Write the column and its unit, such as Force (kN)
log-heading-twice = line { $line }: two headings name the { $column }. Keep one
log-no-force-heading = line { $line }: the headings name no force. Call that column Force, with its unit
log-unit-above = line { $line }: the unit “{ $word }” stands above the headings. Write it into the heading of its column
log-marks-two-ways = { $column }: some numbers have a decimal point and some a decimal comma
log-below-zero = line { $line }: the force is below zero
log-too-many-lines = has { $count } lines; give at most { $most }
log-column-force = force
log-column-gap = gap
log-column-throat = throat
log-column-time = time

## The drawing

figure = Force against opening; dashed, the straight part carried on to { $straight }. { $at ->
        [absent] The readings stay on it.
       *[other] The readings leave it at { $at }, between { $low } and { $high }.
    }{ $lasted ->
        [absent] { "" }
       *[other] { " " }Below it, force against time over { $lasted }.
    }
axis-force = force, { $unit }
axis-opening = opening, { $unit }
axis-time = time, min
mark-leaves = leaves the line
