# One of the reader's own parts: what a worksheet carries of it from My kit, and what that says. `$number` is its own number.

input-own_number = Your own number
    .help = The number of this part in your kit.
input-last_look = Its last full inspection
    .help = It only takes away: a part that is overdue or was never inspected is careful at best.
option-last_look-passed = passed
option-last_look-careful = passed, with a caution in your kit
option-last_look-not-passed = not passed, or not finished
option-last_look-never = never inspected
input-looked_on = Inspected on
    .help = The day of its last full inspection.
input-look_due = Next inspection due by
    .help = No inspection counts for more than a year.

input-items-own_number = { input-own_number }
    .help = { input-own_number.help }
input-items-last_look = { input-last_look }
    .help = { input-last_look.help }
option-items-last_look-passed = { option-last_look-passed }
option-items-last_look-careful = { option-last_look-careful }
option-items-last_look-not-passed = { option-last_look-not-passed }
option-items-last_look-never = { option-last_look-never }
input-items-looked_on = { input-looked_on }
    .help = { input-looked_on.help }
input-items-look_due = { input-look_due }
    .help = { input-look_due.help }

input-tie_downs-own_number = { input-own_number }
    .help = { input-own_number.help }
input-tie_downs-last_look = { input-last_look }
    .help = { input-last_look.help }
option-tie_downs-last_look-passed = { option-last_look-passed }
option-tie_downs-last_look-careful = { option-last_look-careful }
option-tie_downs-last_look-not-passed = { option-last_look-not-passed }
option-tie_downs-last_look-never = { option-last_look-never }
input-tie_downs-looked_on = { input-looked_on }
    .help = { input-looked_on.help }
input-tie_downs-look_due = { input-look_due }
    .help = { input-look_due.help }

refused-own-part-without-look = is missing. Your own number counts only together with how the last full inspection of that part ended. Choose one, or empty its number and its days.

reason-own-parts =
    .closing = From your kit: { $parts }.
own-part-was-never = { $number }, never inspected
own-part-looked = { $number }, { $look ->
        [passed] inspected { $on }
        [careful] inspected { $on }, with a caution
       *[other] not passed on { $on }
    }
own-part-looked-some-day = { $number }, { $look ->
        [passed] inspected on an unknown day
        [careful] inspected on an unknown day, with a caution
       *[other] not passed on an unknown day
    }
own-part-due = { $number } was due by { $due }
reason-own-part-never =
    .caution = { $count ->
        [one] { $parts } was never fully inspected. Inspect it before you use it.
       *[other] These were never fully inspected: { $parts }. Inspect each before you use it.
    }
reason-own-part-without-day =
    .caution = { $count ->
        [one] Nobody has said when { $parts } was last inspected and when the next inspection is due. Find it out before you use it.
       *[other] Nobody has said when these were last inspected and when the next inspection is due: { $parts }. Find it out before you use them.
    }
reason-own-part-overdue =
    .caution = { $count ->
        [one] The next full inspection of { $parts }. Inspect it before you use it.
       *[other] Their next full inspection: { $parts }. Inspect each before you use it.
    }
reason-own-part-careful =
    .caution = { $count ->
        [one] { $parts } passed its last inspection, but your kit gives a caution for it. Read its page in your kit before you use it.
       *[other] These passed their last inspection, but your kit gives a caution for them: { $parts }. Read their pages in your kit before you use them.
    }
