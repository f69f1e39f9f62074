# Worksheet tag.

title = What belongs on the tag of this part?
summary = Makes a tag to print and cut out: your own number, the mark, the maker's rating as it stands on the maker's tag, the inspection dates, and a QR code of the same words. A failed part gets a “Do not use” tag.
story = The yard's sling hook passed its inspection today. It gets a tag with its number.

## What is asked

input-own_number = Own number
    .help = The number that you gave the part, such as H-2. Up to 24 letters.
input-finding = What the inspection found
option-finding-passed = It passed
option-finding-failed = It failed
option-finding-altered = It was welded, heated, ground, bent or drilled
option-finding-unmarked = No mark can be read
input-mark = Mark as read on the part
    .help = Letter for letter. Up to 28 letters.
input-rating = Rating as it stands on the maker's tag
    .help = Letter for letter, with its unit. If the maker gave none, leave it empty. Up to 44 letters.
input-inspected_on = Date of this inspection
    .help = Such as 2026-01-17, 17 Jan 2026 or today.
input-months = Next inspection after (months)
    .help = As the law of your place and the use of the part ask.
input-inspected_by = Inspected by
    .help = Up to 28 letters.
input-size = Size of the tag
option-size-148x76 = 148 × 76 mm, on A4 or Letter
option-size-6x3 = Label, 6 × 3 in
option-size-4x2 = Label, 4 × 2 in

## What is found

result-tag = Tag
result-lines = Words on the tag
result-width = Size

## The tag

tag-inspected = Inspected
tag-do-not-use = Do not use
tag-foot = Own tag. Go by the maker’s tag.
tag-foot-do-not-use = Do not take this tag off.
line-number = { $number }
line-mark = Mark: { $mark }
line-rating = Maker’s rating: { $rating }
line-ties-down = Ties down, never lifts: { $rating }
no-figure = see mark
line-no-rating = No rating by the maker on record
line-inspected = Inspected { $day }
line-next = Next by { $day }
line-by = By { $who }
line-failed = Failed its inspection
line-altered = Altered: no rating
line-unmarked = No mark: no rating
line-overdue = Inspection overdue
line-no-finding = Not inspected
line-no-mark = Mark not read
line-no-day = No date of inspection
line-no-next = No next date
line-no-name = No inspector named
size-148x76 = 148 × 76 mm
size-6x3 = 6 × 3 in
size-4x2 = 4 × 2 in
figure = The tag “{ $tag }”, { $size }, with its words as a QR code.

## The headline and the cautions

reason-failed =
    .headline = This part failed: it gets a “Do not use” tag.
reason-altered =
    .headline = This part was altered: it gets a “Do not use” tag. No tag gives an altered part its rating back.
reason-unmarked =
    .headline = This part has no mark that can be read: it gets a “Do not use” tag.
reason-overdue =
    .headline = The next inspection was due before today: the tag says “Do not use” until the part is inspected.
reason-no-finding =
    .headline = What the inspection found is not given: the tag says “Do not use” until it is.
reason-no-mark =
    .headline = The mark on the part is not given: the tag says “Do not use” until it is.
reason-no-day =
    .headline = The date of the inspection is not given: the tag says “Do not use” until it is.
reason-no-next =
    .headline = The time to the next inspection is not given: the tag says “Do not use” until it is.
reason-no-name =
    .headline = The name of the inspector is not given: the tag says “Do not use” until it is.
reason-repeats =
    .headline = The tag of “{ $number }” repeats what you read on the part and on the maker's tag. It gives no rating of its own.
    .caution = Read the tag against the part before you hang it. Where the two differ, the part is out of use until you know why.
reason-ties-down-only =
    .caution = The mark can name a grade that never lifts. The tag says so. If the part is one for lifting, copy its whole mark.
reason-no-rating =
    .caution = The maker's rating is not given, so the tag gives none. Without a rating from the maker, do not lift with it.
reason-destroy =
    .caution = Destroy a failed or altered part: cut it through. Do not straighten, weld or heat it.
reason-hang-it =
    .caution = Print at actual size, not fitted to the page. Tie the tag on with wire where no load bears on it. Never weld it or drill for it.

## The working

step-which-tag = Which tag
    .formula = “Inspected” only if nothing is missing and nothing is against it
    .numbers = missing: { $missing }; against it: { $against }
    .result = { $tag }
step-next-day = Next inspection
    .formula = date of this inspection + months
    .numbers = { $day } + { $months } months
    .result = { $due }

## Refusals

refused-too-long-for-a-tag = has too many letters for the tag. Give up to { $count }.
refused-no-figure = is no figure with a unit, such as 7,100 lb. If the maker gave no rating, leave it empty.
refused-more-than-its-mark = is more than any sling of the chain that the mark names may carry, { $most } at most (our own bound, no source). Read mark and rating again.
refused-found-not-stamped = holds “{ $word }”, which no maker stamps. Copy only the mark itself, and say what you found in the box of what was found.
refused-names-nothing = names no part. Give the number that you gave it, such as H-2.
