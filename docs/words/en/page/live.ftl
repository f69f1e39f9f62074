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
no-answer = No answer: { $count ->
        [one] one box needs
       *[other] { $count } boxes need
    } another look.
stopped = The calculator stopped ({ $reason }). Reload the page.
cannot-run = The calculator cannot run here: { $reason }. Reload the page, or try another browser. The tables of this book work without it.
cannot-run-typed = The calculator cannot run here: { $reason }. What you typed is kept, and is NOT worked out: there is no answer. Reload the page, or try another browser. The tables of this book work without it.

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
fault-server-said = { $file }: the server said { $status }
fault-no-content = { $file }: the answer has no content
fault-image-damaged = the memory image is damaged
fault-no-such-road = from disk there is no ordinary road
