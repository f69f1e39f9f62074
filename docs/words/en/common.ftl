# Words that every worksheet shares. A worksheet's own file may say the same key in its own words.

verdict-ok = Within the rating
verdict-caution = Careful
verdict-stop = Stop
verdict-unknown = Cannot be rated
# What ok reads on a worksheet that rates nothing.
verdict-worked-out = Worked out

yes = yes
no = no
nothing = none
# In the place of a file or a pasted log, in the list of what an answer was worked out from.
given = given
listing-empty = none

## Why a value is absent

absent-not-known = not known from these inputs
absent-not-given = not given

## Refusals go on from the name of the box: "Load: “x” is too small. Give ..."

unusable = { $reason }. Give { $accepted }.
missing = is missing. Give { $accepted }.
no-such-input = is not an input here; there are { $names }
refused-needed-here = is missing. What you chose above needs it.
refused-without-bound = comes out without bound for these inputs; they cannot be answered.
refused-units = is not known. Give us or si.

## The same beside its box, as a whole sentence. Reasons that name what was typed themselves stand alone.

refusal = { $reason ->
        [unreadable-not-plain-number] { $why }
        [unreadable-not-unit-of] { $why }
       *[other] “{ $given }” { $why }
    }
refusal-of-nothing = { $reason ->
        [unreadable-not-plain-number] { $why }
        [unreadable-not-unit-of] { $why }
       *[other] This { $why }
    }
refused-too-large-or-small = These numbers are too large or too small to be worked out.

## What would do. `$bounds` is a list of bounds, or empty.

accepted-quantity = { $what }{ bounds-of }
bounds-of = { $bounds ->
        [0] { "" }
       *[other] , { $bounds }
    }
accepted-number = a number{ bounds-of }
accepted-count = a whole number{ bounds-of }
accepted-choice = one of: { $values }
accepted-text = a word or two
accepted-long-text = text of up to { $count } characters
accepted-flag = yes or no
accepted-date = a day from 1970 to today, such as 2026-01-17 or 17 Jan 2026, or the word today
accepted-due = a day up to ten years ahead, such as 2027-01-17 or 17 Jan 2027
accepted-point = three lengths, x, y and z{ bounds-of }
accepted-numbers = values such as { $sample }, separated by semicolons{ bounds-of }
accepted-rows = a list of rows{ bounds-of }
accepted-file = a file
accepted-length = a length such as { $sample }
bound-over = over { $bound }
bound-from = { $bound } or more
bound-below = below { $bound }
bound-up-to = up to { $bound }

sample-length = a length such as { $sample }
sample-area = an area such as { $sample }
sample-volume = a volume such as { $sample }
sample-second_moment = a second moment such as { $sample }
sample-weight = a weight such as { $sample }
sample-force = a force such as { $sample }
sample-pressure = a pressure such as { $sample }
sample-torque = a torque such as { $sample }
sample-energy = an energy such as { $sample }
sample-power = a power such as { $sample }
sample-speed = a speed such as { $sample }
sample-time = a time such as { $sample }
sample-angle = an angle such as { $sample }
sample-temperature = a temperature such as { $sample }
sample-temperature_difference = a temperature difference such as { $sample }
sample-density = a density such as { $sample }
sample-weight_per_length = a weight per length such as { $sample }
sample-weight_per_area = a weight per area such as { $sample }
sample-stiffness = a stiffness such as { $sample }
sample-heat_input = a heat input such as { $sample }
sample-force_rate = a force rate such as { $sample }
sample-voltage = a voltage such as { $sample }
sample-current = a current such as { $sample }
sample-fraction = a fraction such as { $sample }

dimension-length = length
dimension-area = area
dimension-volume = volume
dimension-second_moment = second moment
dimension-weight = weight
dimension-force = force
dimension-pressure = pressure
dimension-torque = torque
dimension-energy = energy
dimension-power = power
dimension-speed = speed
dimension-time = time
dimension-angle = angle
dimension-temperature = temperature
dimension-temperature_difference = temperature difference
dimension-density = density
dimension-weight_per_length = weight per length
dimension-weight_per_area = weight per area
dimension-stiffness = stiffness
dimension-heat_input = heat input
dimension-force_rate = force rate
dimension-voltage = voltage
dimension-current = current
dimension-fraction = fraction

## How something typed was read, where it could have been read otherwise

read-as = { $first }{ $second ->
        [absent] { "" }
       *[other] { " " }({ $second })
    }

## Why something typed cannot be read

unreadable-not-unit-of = { $unit } is not a unit of { $dimension }
unreadable-not-plain-number = “{ $typed }” is not one plain number
unreadable-not-finite = is not a finite number
unreadable-number-without-unit = has a number without its unit; write each with its unit, such as 5 ft 3 in
unreadable-too-large-number = is too large a number
unreadable-not-added-up = cannot be added up; write the larger unit first, such as 5 ft 3 in
unreadable-empty = is empty
unreadable-from-here-on = cannot be read from “{ $rest }” on
unreadable-no-number-before-unit = has no number in front of the unit
unreadable-no-number = has no number
unreadable-without-unit = has no unit; write the number with its unit
unreadable-divides-by-zero = divides by zero
unreadable-spaces-two-ways = has spaces that can be read two ways: { $typed }
unreadable-marks-two-ways = has commas or points that can be read two ways: { $typed }
unreadable-thousand-or-decimal = can be read as { $thousand } or as { $decimal }; write it without the point, or with another number of digits behind it
unreadable-comma-and-not-three = has a comma without three digits behind it: write { $decimal } if you mean that, or thousands with all their digits
unreadable-percent-or-share = can be read as { $percent } or as { $share }; write the number with its % sign
unreadable-dash-two-ways = can be read as feet and inches, as a number with half a fraction, or as from one number to another; write 6 ft 2 in, or one number
unreadable-two-units-ton = is in { $unit }, which can be a short ton (2,000 lb), a tonne (1,000 kg) or a long ton (2,240 lb); write short tons, tonnes or long tons
unreadable-two-units-grad = is in { $unit }, which can be a degree or a gon (a hundredth of a right angle); write degrees or gon
unreadable-unit-of-another = has the unit { $unit }, a unit of { $other }, where { $wanted } is wanted
unreadable-unknown-unit = has a unit this book does not know: { $unit }
unreadable-too-small = is too small
unreadable-too-large = is too large for this box
unreadable-not-single = is not a single value
unreadable-not-whole = is not a whole number
unreadable-not-a-choice = is not known here
unreadable-too-many-characters = has { $count } characters
unreadable-neither-yes-nor-no = is neither yes nor no
unreadable-not-three-parts = does not have three parts, x; y; z
unreadable-not-a-list = is not a list
unreadable-has-values = has { $count ->
        [one] one value
       *[other] { $count } values
    }
unreadable-not-rows = is not a list of rows
unreadable-has-rows = has { $count ->
        [0] no rows
        [one] one row
       *[other] { $count } rows
    }
unreadable-not-a-file = cannot be read as a file
unreadable-not-a-date = is not a day this book can read
unreadable-no-such-day = is not a day of the calendar
unreadable-two-dates = can be read as { $one } or as { $other }
unreadable-date-in-the-future = means { $day }, which is still to come
unreadable-date-too-late = means { $day }, which is too far ahead
unreadable-date-too-old = means { $day }, which is too long ago

## Why the tables give no rating

not-rated-size-not-readable = size “{ $size }” { $reason }; sizes are { $sizes }
not-rated-size-not-listed = size “{ $size }” is not in this table; sizes are { $sizes }
not-rated-metric-size-not-readable = size “{ $size }” { $reason }; sizes are { $sizes } mm
not-rated-metric-size-not-listed = size “{ $size }” is not in the table of grade { $grade }; sizes are { $sizes } mm
not-rated-ties-down-only = grade { $grade } chain has no lifting rating; it ties loads down only
not-rated-grade-not-lifting = grade { $grade } is not in the lifting tables; they have grades { $grades }
not-rated-grade-not-metric = grade { $grade } is not in the metric lifting table; it has grades { $grades }
not-rated-grade-not-tie-down = grade { $grade } is not in the tie-down table; it has grades { $grades }
size-in-and-mm = { $inch } in ({ $metric } mm)
size-in = { $inch } in
