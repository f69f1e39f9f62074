# What the search says. All of it goes into the data of the search, which comes when a box is first used.

# The first line: how the words were read.
read-as = Read as: { $words }.
typed = { $word } (typed “{ $typed }”)
grade = grade { $grade }
grade-named = grade { $grade } ({ $name })
grade-or = { $one } or { $other }
inches = { $size } in
millimetres = { $size } mm
legs = { $count } { $count ->
        [1] leg
       *[other] legs
    }
three-or-four-legs = 3 or 4 legs
angle = { $degrees }°
tons = { $tons } { $tons ->
        [1] short ton
       *[other] short tons
    }
unknown = “{ $words }” is not a word in this book, so no number is shown.
left-out = “{ $words }” is not a word in this book, and was left out.
open-number = Is { $number } a size or a grade? Write { $number } in, { $number } mm or grade { $number }.
two-parts = More than one part is named, so no number is shown. Ask for one part with its size.
which-part = { $size } of what? Choose the part.
unknown-grade = Grade { $grade } is not in this book, so no number is shown.
no-rating = No rating is printed for { $what }.
no-rating-sizes = No rating is printed for { $what }. Printed sizes: { $sizes }.
nothing = Nothing in this book goes by these words. Try a part and a size, such as shackle 1/2, or one word.

## The answers

row = The row { $row }
named = { $part }, { $label }
never-lifts = Never lifts
ties-down = It only ties down: { $answer }.
only-ties-down = It is made to tie down, never to lift.
part-of-size = { $part }, { $size }
see-rating = Show its ratings
# A worksheet that opens with the numbers that were typed.
opens-with = Opens with { $boxes } filled in.
from-the-horizontal = { $angle } from the horizontal
unit-wanted = in { $unit }
kind-table = Ratings and limits
kind-sheet = Worksheet
kind-text = Page
kind-list = List
more = Show { $count } more
found = { $count ->
        [0] Nothing found.
        [one] One answer.
       *[other] { $count } answers.
    }
