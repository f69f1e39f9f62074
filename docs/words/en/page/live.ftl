# Words that the page's script shows: how the answer stands, what is wrong with a file, why the calculator cannot run.
# They reach the page as data. A message may name its facts and choose by one, and nothing else.

working = Working it out.
starting = Starting the calculator. Your answer comes as soon as it runs.
# Before anything is typed.
empty = No answer yet. Fill the boxes, or show the example.
# `$boxes` names the first boxes that are still empty.
unfinished = No answer yet. Still to fill: { $boxes }{ $more ->
        [0] .
       *[other] { " " }and { $more } more.
    }
bar-empty = No answer yet
bar-unfinished = No answer: { $count ->
        [one] 1 box to fill
       *[other] { $count } boxes to fill
    }
bar-errors = No answer: look at { $boxes }
bar-working = Working it out
bar-failed = No answer: the calculator does not run
carried = Carried over from “{ $sheet }”.
# The numbers of a printed sheet. `$printed` and `$code` are the eight letters of tables and code.
brought-back = These numbers come from a printed sheet, made by tables and code { $printed }. This book has { $code }. Compare the two answers.
job-print = Print this page
back-working = Reading the text.
back-cannot-run = The calculator does not run here: { $reason }. The text cannot be read. Reload the page, or try another browser.
no-answer = No answer: { $count ->
        [one] one box needs
       *[other] { $count } boxes need
    } another look.
stopped = No answer. The calculator stopped: { $reason }. Try again, or reload the page.
cannot-run = The calculator does not run here: { $reason }. Reload the page, or try another browser. The tables of this book work without it.
cannot-run-typed = No answer. The calculator does not run here: { $reason }. What you typed is kept, and is NOT worked out. Reload the page, or try another browser. The tables of this book work without it.
# The page's Python is not the one that this page was built with.
other-edition = No answer. This page and the calculator are of two editions, and their figures may differ. Reload the page.
example-differs = No answer. The calculator's answer to the example is not the one that is printed in this page, so no answer of this page can be trusted. Reload the page. If it stays, use the tables and write to whoever gave you this book.

## My kit

kit-opening = Opening your kit.
kit-cannot-run = Your kit is kept on this device, but it cannot be shown: { $reason }. Reload the page.
kit-not-allowed = This browser does not let this page keep anything ({ $reason }). Your kit cannot be kept here. A private window, a blocked store or a folder opened from disk can be the reason. Use an ordinary window, or save a copy elsewhere.
kit-no-room = There is no room on this device. Nothing was changed. Delete something else, or take out photos, and save again.
kit-changed-elsewhere = This part was changed in another window. Nothing was saved. Open it again to see what it says now.
kit-no-photo = This browser cannot read that picture. The part is saved without it.
kit-taken = { $number } is filled in. Look at it before you use it: what you see today counts.
kit-kept-safe = Saved. The browser keeps your kit until you delete it.
kit-kept = Saved. The browser may drop your kit when space runs short, so save a copy.

## The keys under a box, on a touch screen

keys = Keys for this box
key-slash = fraction bar
key-dash = dash
key-thousand = thousand
key-letters = keyboard with letters

## A drawn solid, given as a file

reading-file = Working out { $file }, { $megabytes } MB.
reading-large-file = Working out { $file }, { $megabytes } MB. A large drawing takes some seconds.
file-empty = “{ $file }” is an empty file. Save the drawing again, or take the file out.
file-too-large = “{ $file }” is { $megabytes } MB. Give a file of up to { $most } MB.

## Why the calculator cannot run: these stand in `cannot-run` and `stopped`

fault-no-workers = this browser has no workers
fault-not-in-time = it did not start in time
fault-worker-refused = the browser refused the worker
fault-worker-stopped = the worker stopped
fault-not-running = Python is not running
fault-file-missing = a file of this folder is missing: { $file }
fault-no-webassembly = this browser has no WebAssembly
fault-webassembly-forbidden = this page is not allowed to use WebAssembly ({ $error })
fault-server-said = the server has not sent { $file } (it said { $status })
fault-no-content = the server sent { $file } empty
fault-not-fetched = { $file } could not be fetched; there may be no signal
fault-not-fetched-whole = { $file } could not be fetched whole; there may be no signal, or it is damaged
fault-cut-short = the line broke while { $file } was on its way
fault-damaged = { $file } is damaged
fault-in-python = a mistake in this book ({ $error })
fault-browser-said = the browser said “{ $error }”
fault-no-reply = it no longer replies
fault-two-editions = this page and its script are of two editions
fault-no-such-road = the book was opened from disk, where it has only one way to start
