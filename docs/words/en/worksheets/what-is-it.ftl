# Worksheet what-is-it.

title = What chain is this, and what may it do?
summary = Sizes and grades that a chain can be, from its wire, its links and its marks, with the rating for each use.
story = A length of chain came with a second-hand boat trailer. The yard asks whether it may lift an engine.

## What is asked

input-measured_diameter = Thickness of the wire
    .help = Across the wire, where it is least worn: on the straight of the link. Use a caliper.
input-pitch = Inside length of one link
    .help = Inside one link, from bearing to bearing. It tells a worn link from a smaller one.
input-marks = Marks as you see them
    .help = Letters and figures stamped on the links, such as G70, 8, T, 10. Look at several links. If there are no marks, write none.
input-use = What you want to do with it
option-use-lift = Lift
option-use-tie_down = Tie a load down
option-use-both = Either
input-condition = Condition
    .help = The worst that you find on any link. Leave it empty until you have looked at every link.
option-condition-sound = Sound: no weld, heat, crack, bend or stretch
option-condition-worn = Worn
option-condition-welded = Welded or weld spatter on it
option-condition-heated = Heated, burned or blued
option-condition-cracked = Cracked or gouged
option-condition-bent = Bent, twisted or stretched
option-condition-home-made = Shop-made or mended

## What is found

result-rating_lift = Lifting rating, one straight leg
result-rating_tie_down = Tie-down limit
result-grade = Grade
result-size = Size
result-candidates = Sizes that fit
result-least_wear = Wear of the wire, at least
result-most_wear = Wear of the wire, at most
result-why = Why

## What it may do

reason-held-altered =
    .headline = { $says }
reason-held-worn-out =
    .headline = The wire is thinner than { $sizes } chain may be. Remove it from service.
    .caution = The wire is worn past the strictest limit for its size, or the mark is that of another chain. In both cases do not use it.
reason-held-not-looked-over =
    .headline = You have not said yet what condition it is in, so it cannot be rated.
    .caution = Look at every link for wear, weld, heat, cracks and bends, and say what you found. Until then do not use it.
reason-held-worn =
    .headline = It is worn. Check the wear against its limits first.
    .caution = Check the most worn link and the length before you ask for a rating. Do not use the chain until it passes.
reason-held-marks-not-looked-at =
    .headline = You have not said yet what marks it has, so it cannot be rated.
    .caution = Wipe several links and read the marks. If there are no marks, write none.
reason-held-marks-not-understood =
    .headline = Not every mark was understood ({ $words }), so it cannot be rated.
    .caution = Give only the marks for grade and size. If there is another mark on the links, ask the maker what it means before you use the chain.
reason-held-may-be-worn-out =
    .headline = This can be a smaller size, or a larger one that is worn out ({ $sizes }), so it cannot be rated yet.
    .caution = Measure the inside length of a link, or find the size mark: they tell a worn link from a smaller one.
reason-held-size-mark-denied =
    .headline = The size mark and the wire do not agree, so it cannot be rated.
    .caution = Measure the wire again on the straight of a link, and read the mark again. One of the two is wrong.
reason-may-not-lift =
    .headline = { $says }
reason-no-rating =
    .headline = { $says }
reason-in-doubt =
    .headline = { $says }
reason-rated =
    .headline = { $says }
says-nothing = This chain ({ $grades ->
        [absent] unmarked
       *[other] grade { $grades }
    }, { $size }) cannot be rated. Remove it from service.
says = { $grades ->
        [absent] Unmarked
       *[other] Grade { $grades }
    } chain, { $size }: { $parts }.
says-lifts = one straight leg may lift { $rating } at most, if its tag agrees
says-may-not-lift = it may not lift
says-no-lifting-rating = it has no lifting rating here
says-ties-down = it ties down { $rating }
says-no-tie-down-limit = it has no tie-down limit here
size-in-doubt = size in doubt

reason-do-not-lift =
    .caution = Do not lift with this chain, not even once, with a light load or as a test.
reason-cut-it-up =
    .caution = Cut it up, or tag it so that nobody uses it again.
reason-badly-worn-larger-size =
    .caution = If this once was { $size }, it is badly worn. Measure an unworn place, on the straight of the link, and the inside length, before you call it a smaller size.
reason-inch-and-metric-look-alike =
    .caution = Inch and metric chain of near sizes look alike (5/16 in and 8 mm). Fit hooks and binders by the mark, not by eye.
reason-tag-governs =
    .caution = Go by the tag on the sling and the maker's marks. A chain without a readable tag is not a lifting sling, even if its links are marked.

grades = { $grades }
candidate-as-new = { $size }: measures as new
candidate-worn = { $size }: worn by { $wear }

why-no-grade = No mark names a grade. Never lift with unmarked chain. As a tie-down it counts as grade 30 of its size in the United States (49 CFR 393.108(d)) and as nothing in Canada.
why-several-grades = The marks can mean grade { $grades }. The lowest rating is used.
why-not-read = Not read as a grade: { $words }.
why-several-sizes = The wire fits more than one size, new or worn. The rating is that of the smallest.
why-pitch-excludes = The inside length rules out { $sizes }.
why-size-mark-denied = The size mark and the wire do not agree.
why-condition = { $condition }: no rating holds, whatever the marks say.
why-lifting = Lifting: { $printed }, { $place }{ seen-as }.
why-tie-down = Tie-down: { $printed }, { $place }{ seen-as }.
seen-as = { $seen ->
        [text] { "" }
        [copy] { " " }(read in a reprint)
       *[memory] { " " }(not read in its source)
    }

## The working

step-if-it-was = If it once was { $size }
    .formula = 1 − wire now / wire new
    .numbers = 1 − { OWN($now) } / { OWN($new) }
    .result = worn by { $wear }

## Why a result is absent

absent-held-altered = no rating: welded, heated, cracked, bent or shop-made chain is out of service
absent-held-worn-out = no rating: worn past the strictest limit
absent-held-not-looked-over = none until its condition is looked at
absent-held-worn = none until the wear is held against its limits
absent-held-marks-not-looked-at = none until its marks are looked at
absent-held-marks-not-understood = none: not every mark was understood
absent-held-may-be-worn-out = none: it may be a larger size that is worn out
absent-held-size-mark-denied = none: the size mark and the wire do not agree
absent-not-the-use-asked = not asked: you want to tie a load down
absent-no-lifting-use-unmarked = no lifting use: no readable grade mark
absent-no-lifting-use = no lifting use: the mark can mean grade { $grades }
absent-no-table-rates = no table rates grade { $grades } in this size: go by its tag
absent-law-has-no-mark = the law's table does not have this mark: go by the maker's own limit
absent-law-has-no-size = the law's table does not have this size: go by the maker's mark
absent-no-grade-mark = no readable grade mark
absent-more-than-one-fits = more than one size fits

## Refusals

refused-fits-no-chain = fits no chain of the tables, which run from { $smallest } to { $largest }. Measure the wire of the link, not its width.
refused-does-not-go-with-size-mark = does not go with the size mark. Measure inside one link, from bearing to bearing, and read the mark again.
refused-does-not-go-with-wire = does not go with a wire that thick. Measure inside one link, from bearing to bearing.
