# What stands round every page: head, foot, search, and what a phone that keeps the book calls it.

book = Linkwright
book-long = Linkwright: rated lifting and tie-down hardware
book-description = Ratings of lifting and tie-down hardware, and worksheets that work them out.
site-description = A handbook of rated lifting and tie-down hardware for the small shop, with worksheets that show their working.
page-title = { $title } | Linkwright
page-not-found = This page is not in the book
not-found =
    .lede = The address is mistyped, or the page has a new name. Search for it in the box above, or choose a part of the book.
    .home = The first page
skip = Skip to the page
page-moved = This page is now part of { $page }.
    .title = Moved: { $page }{ $number ->
        [one] {""}
       *[other] { " " }({ $number })
    }
link-to-part = Link to this part

## Search

search-region = The whole book
search-label = Search the book
search-placeholder = Part, size, grade
search-clear = Clear the search
search-help = Answers appear as you type. Arrow keys move through them.
search-results = Answers

## The box of the home page

ask-label = What do you need to know?
ask-placeholder = 3/8 g70, hook latch
ask-go = Find
ask-help = Type a part with its size and grade, or ask in your own words. { $list }.
ask-list = Every rating in one list

## Head and foot

to-home = Linkwright, first page
to-part = To the list: { $part }
menu = Menu
menu-parts = Parts of the book
menu-kit = My kit
menu-how-to-use = How to use this book
place = Where you are
place-what = Where sources differ, the rule of your place stands first. The worksheets always judge by the strictest.
place-none = Not said: the strictest first
place-us-federal = United States, federal rules
place-us-state = United States, a state with its own rules
place-ca = Canada
place-gb = United Kingdom
place-eu = Germany and the European Union
place-au = Australia
light-or-dark = Light or dark page
doors = The four parts
on-this-page = On this page
more = More in this part
more-in = More in “{ $part }”
everything-here = Everything in this part
not-a-permission = { $what } It is not permission to lift. It cannot see your part, your rigging or your load. The mark and tag on the part govern, then its maker, then the law where you stand; if they and this book differ, they are right. In doubt, ask a qualified person and leave the load on the floor.
    .what = What this book is not.
foot-sheet = Sheet
foot-edition = Edition
foot-printed = Printed
foot-device = On this device
foot-trust = How far to trust it
foot-sources = Sources
# `$hash` are eight letters that name all tables and code: two papers that bear the same were made by the same book.
edition = { $number } of { $date }, commit { $commit }, tables and code { $hash }
edition-working-copy = { $number }, working copy, tables and code { $hash }
working-copy = working copy



## Sheets to print

on-paper = On paper (PDF):
on-paper-size =
    .label = { $title } PDF for paper of size { $size }
paper-a4 = A4
paper-letter = Letter

## My kit: what stands on its page before any part does

kit-page = My kit
kit-page-no-script = Scripts are off or did not load, so your kit cannot be shown. What you saved is still on this device.
kit-page-add = Add a part
kit-page-find = Search your kit
kit-page-show = Show
kit-page-all = all parts
kit-page-due = parts that need a look
kit-page-out = parts out of use
kit-page-more = Show more
kit-page-not-all = More parts follow that are not on this paper. Show all of them on the page first, then print it.
kit-page-copies = Copies
    .how = Your kit is kept on this device only, and nothing is sent anywhere. Save a copy before you clear the browser, and to move your kit to another device.
kit-page-save = Save a copy
kit-page-save-table = Save as a table (CSV)
kit-page-save-dates = Save the dates (calendar)
kit-page-read = Read a copy: it shows what differs before it writes anything.
kit-page-form = The copy is a text that other programs can read. Its form is described in { $link }.
    .link = a JSON Schema
