# What the pages of My kit say of the reader's own parts. These words go with calc into the page.

## Kinds of part

kit-kind-chain-sling = Chain sling
kit-kind-hook = Sling hook
kit-kind-shackle = Shackle
kit-kind-ring = Ring or master link
kit-kind-eyebolt = Eyebolt with shoulder
kit-kind-eyebolt-plain = Eyebolt without shoulder
kit-kind-wire-rope = Wire rope sling
kit-kind-web-sling = Web or round sling
kit-kind-fibre-rope = Fiber rope sling
kit-kind-turnbuckle = Turnbuckle
kit-kind-hoist = Hoist or come-along
kit-kind-crane-hook = Hook of a crane or hoist
kit-kind-tie-down-chain = Tie-down chain
kit-kind-strap = Tie-down strap
kit-kind-binder = Load binder
kit-kind-anchor = Anchor point on the vehicle
kit-kind-other = Other part
kit-called = { $kind }{ $size ->
        [absent] { "" }
       *[other] , { $size }
    }{ $mark ->
        [absent] { "" }
       *[other] , mark { $mark }
    }{ $name ->
        [absent] { "" }
       *[other] , { $name }
    }

## The boxes of the form

kit-field = { $field }
kit-needed-field = { $field } (needed)
kit-field-number = Your own number for it
kit-help-number = Paint it or stamp a tag: the maker's own way of marking comes first. Never stamp the part itself where it carries load.
kit-field-kind = What it is
kit-field-name = What you call it
kit-field-mark = Grade mark on the part
kit-help-mark = Type only what you can read, such as 8, G80, 70 or A. Leave it empty if there is no mark.
kit-field-other_marks = Other marks: maker, serial, batch
kit-field-size = Size
kit-help-size = Of chain and its hooks: the chain size. Of a shackle: the diameter of its bow.
kit-field-rating = Rating that its maker put on it
kit-help-rating = With its unit, such as 7,100 lb or 2 t. Leave it empty if you cannot read one.
kit-field-tag = What else its tag says
kit-field-condition = Mark and condition
kit-help-condition = Look at the whole part before you answer.
kit-field-bought_on = Bought on
kit-field-bought = Bought
kit-bought-new = new
kit-bought-used = used
kit-field-place = Where it is used
kit-field-service = Service
kit-help-service = Place and service decide when it must be looked at next. What you leave empty takes the shortest interval.
kit-field-photo = Photo
kit-help-photo = It is made small and stays on this device, and in the copies that you save.
kit-field-out = Out of use
kit-field-out_why = Why it is taken out of use
kit-field-out_on = Since when
kit-field-out_by = Who took it out
kit-field-on = Date of the look
kit-field-by = Who looked
kit-field-found = What was found
kit-field-note = Note
kit-new-size = { $measure }, when new
kit-reading-of = { $measure }, now
kit-measure-throat = Throat of the hook
kit-measure-section = Thickness of the hook in its bowl
kit-measure-body = Thickness of the bow
kit-measure-pin = Thickness of the pin
kit-measure-thickness = Thinnest link
kit-measure-reach = Length over the measured links
kit-choose = Choose
kit-not-said = Not said
kit-more-boxes = More about it: dates, place, sizes when new, photo
kit-save = Save
kit-leave = Leave without saving
kit-back = Back to my kit
kit-damaged = Damaged
kit-form-new = Add a part
kit-form-edit = Change a part

kit-needed = This is needed here.
kit-not-read = “{ $typed }” { $reason }.
kit-too-long = This is too long. Up to 200 characters are kept.
kit-not-taken = This cannot be kept. Type it as plain text on one line.
kit-number-taken = Another part of your kit has this number. Give this one a number of its own, and mark it with that.
kit-kind-inspected = Its inspections were made of it as: { $kind }. They would pass another kind of part. Take it out of use, or add this part anew.
kit-altered-only-out = An altered part can be kept only as taken out of use. Say here why it is out of use.

## The list

kit-count = { $count ->
        [0] Your kit is empty. Add the first part: its number, what it is, and the marks that you can read.
        [one] 1 part.
       *[other] { $count } parts.
    }{ $due ->
        [0] { "" }
        [one] { " " }1 part needs a look.
       *[other] { " " }{ $due } parts need a look.
    }
kit-line-out = Out of use: { $why }
kit-line-no-rating = No rating known
kit-line-not-now = Do not use it now
kit-line-rated = Rated { $rating }
kit-line-ties-down = Rated { $rating }, for tying down only
kit-when-out = Out since
kit-when-never = Never inspected
kit-when-not-passed = Passed no inspection yet
kit-when-overdue = Was due
kit-when-by = By

## One part

kit-part-title = { $number }: { $what }
kit-verdict-ok = Rated and inspected
kit-verdict-caution = Careful
kit-verdict-stop = Do not use
kit-verdict-unknown = Cannot be rated
kit-verdict-out = Out of use
kit-big-rated = Rated, in a straight pull
kit-big-ties-down = Rated, for tying down only
kit-judge = Inspect it now
kit-write-look = Write down a look
kit-edit = Change it
kit-take-out = Take it out of use
kit-rests-on = Its rating: { $basis }.
kit-next = Next full inspection
kit-next-says = { $date }. The interval is { $months ->
        [one] 1 month
       *[other] { $months } months
    }, the shortest that may apply to this place and service. The longest that any of these rules gives is { $longest ->
        [one] 1 month
       *[other] { $longest } months
    }. Look at it before each use as well.
kit-no-date = No date yet, because no inspection has found it good
kit-what = What it is
kit-photo-of = Photo of { $number }
kit-out-says = { $date }: { $why }{ $by ->
        [absent] { "" }
       *[other] , by { $by }
    }
kit-found-altered = found altered
kit-sources = Where the figures come from
kit-history = Inspections
kit-history-empty = None is written down yet.
kit-look = { $date }: { $found }
kit-look-who = { $by ->
        [absent] { $how }
       *[other] { $by }, { $how }
    }
kit-look-by-hand = written down by hand
kit-look-by-sheet = judged by this book's worksheet
kit-reading = { $measure }: { $size }
kit-found-ok = found good
kit-found-caution = good, but near a limit
kit-found-stop = not fit for use
kit-found-unknown = not finished
kit-look-title = Write down a look at { $number }
kit-look-help = Only a look at the whole part counts, by the rules for its kind. The worksheet that inspects it asks for each point.
kit-out-title = Take { $number } out of use
kit-out-is-final = This is for good. The part stays in your kit as out of use, and nothing brings it back. Cut it through, so that nobody uses it.

kit-name = My kit
kit-use-load-path = Use it in a line of parts
kit-use-tag = Print a tag for it
kit-use-tie-down = Use it to tie a load down
kit-entry = Inspect { $number }: { $what }
kit-field-save_to = Save this inspection to
kit-none-fits = No part in your kit fits this inspection.
kit-look-lacks = Give the date of this inspection and who made it, in their boxes above. Then save it.
kit-saved-to = Saved to
kit-saved-out = It was found altered, so it is out of use for good:

kit-none-to-take = No part in your kit fits here.
kit-out-not-taken = { $count ->
        [one] 1 more part is out of use and cannot be taken.
       *[other] { $count } more parts are out of use and cannot be taken.
    }
kit-found = { $count ->
        [0] No part is like that.
        [one] 1 part is like that.
       *[other] { $count } parts are like that.
    }

## Wear

kit-wear-figure = { $measure }, each reading a dot. The dashed line is its limit. Two marks on it show the days between which the line may meet it.
kit-axis-months = Months from today
kit-axis-size = Size [{ $unit }]
kit-mark-limit = Limit { $limit }

kit-wear = { $measure }
kit-wear-limit = The last reading is { $now }. It is out at { $limit }.
kit-wear-no-limit = The last reading is { $now }. The limit is not known without its size when new.
kit-outlook = The line through the readings meets the limit between { $earliest } and { $latest }. One jerk can take it there sooner, so the next inspection comes first.
kit-wear-lacks = { $more ->
        [one] One more reading, on another day, shows how fast it wears.
       *[other] { $more } more readings, each on another day, show how fast it wears.
    }
kit-no-end = a day that cannot be told

## Why a part stands as it does

reason-kit-out =
    .caution = It was taken out of use on { $date }. That is for good. Do not use it for anything.
reason-kit-condition-not-looked-at =
    .caution = You have not said that its mark is readable and that it was found good.
reason-kit-condition-unmarked =
    .caution = It has no readable mark or tag. Do not lift with it.
reason-kit-condition-worn =
    .caution = It is worn. Do not use it until it passes its inspection.
reason-kit-condition-welded =
    .caution = It was welded. No shop test gives it its rating back.
reason-kit-condition-heated =
    .caution = It was heated. No shop test gives it its rating back.
reason-kit-condition-bent =
    .caution = It is bent. Straightening does not give it its rating back.
reason-kit-condition-home-made =
    .caution = It is home-made or mended, so it has no rating.
reason-kit-condition-damaged =
    .caution = It is damaged. Do not use it.
reason-kit-no-rating =
    .caution = It has no rating: { $why }.
reason-kit-ties-down-only =
    .caution = It ties loads down only. Never lift with it.
reason-kit-rating-changed =
    .caution = This book now gives { $now }. Edition { $edition } gave { $was }. Read the part's own tag again, and save the part to note the new figure.
reason-kit-in-use =
    .caution = The mark and the tag on the part come before this list.
reason-kit-look-stopped =
    .caution = The inspection of { $date } found it not fit for use.
reason-kit-look-unfinished =
    .caution = The inspection of { $date } was not finished.
reason-kit-once-stopped =
    .caution = The inspection of { $date } found it not fit for use, and a later one found it good. Find out which is right before you use it.
reason-kit-look-careful =
    .caution = The inspection of { $date } found it near a limit.
reason-kit-not-looked-at =
    .caution = No full inspection that found it good is written down. Inspect it before you use it.
reason-kit-look-ahead =
    .caution = An inspection bears the date { $date }, and this device says that today is { $today }. One of the two is wrong. Set the clock, or inspect the part anew: that inspection does not count.
reason-kit-overdue =
    .caution = Its next full inspection was due on { $date }. Inspect it before you use it.
reason-kit-soon =
    .caution = Its next full inspection is due by { $date }.
reason-kit-worn-out =
    .caution = { $measure }: { $now } is at its limit or past it. Take it out of use.
reason-kit-worn =
    .caution = { $measure }: { $now } is more than halfway to its limit. Measure it again soon.

kit-rating-not-read = its rating “{ $typed }” { $reason }
kit-size-not-read = its size “{ $typed }” { $reason }
kit-mark-over-its-size = its rating “{ $typed }” is more than any part of that kind and size bears, { $most } at most (our own bound, no source), so rating or size was misread
kit-mark-not-understood = the mark “{ $mark }” names no grade that this book knows
kit-mark-against-table = its rating “{ $typed }” is not the { $printed } that the table gives for its mark and size, so one of them was misread
kit-no-rating-given = neither its label nor a grade mark with a size says what it holds

## Files

kit-import-title = What this file brings
kit-brings = New parts: { $added }. Parts that differ: { $changed }. Parts that are the same: { $same }. Nothing is written yet.
kit-added = New parts
kit-and-more = and { $count } more
kit-numbers-twice = More than one part has one of these numbers: { $numbers }. All will be kept. Give each part a number of its own before you use it: one of them may be out of use.
kit-new-looks = { $count ->
        [one] 1 inspection that you do not have
       *[other] { $count } inspections that you do not have
    }
kit-new-photo = another photo
kit-goes-out = It is out of use in the file. It will be out of use here too.
kit-take-theirs = Take what the file says
kit-other-kind = In the file this is another kind of part. Its inspections would pass that, so the file’s part cannot be taken. Add it anew.
kit-take-in = Take it in
kit-head-field = What
kit-head-here = On this device
kit-head-there = With the file
kit-nothing = nothing
kit-refused-not-readable = This file cannot be read. It may be cut off or damaged. Nothing was taken from it.
kit-refused-another-format = This is not a file of a kit. Nothing was taken from it.
kit-refused-newer = This file is from a newer edition of this book ({ $edition }). Open that edition to read it. Nothing was taken from it.
kit-refused-damaged = This file is damaged, or somebody changed it: { $place } is not as it should be. Nothing was taken from it.
kit-refused-changed = This file is damaged, or somebody changed it: its checksum does not fit. Nothing was taken from it.
kit-refused-other-columns = This table does not have the columns of a kit. Nothing was taken from it.
kit-refused-too-large = This file is too large. Nothing was taken from it.
