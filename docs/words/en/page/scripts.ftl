# What the scripts of the page say. All of it is put into every page as data.

rows-shown = { $shown } of { $all } { $all ->
        [one] row
       *[other] rows
    }.
show-all-rows = Show all
nothing-to-sift = Nothing is printed for this.
pin-source = Source:

search-failed = The search did not load. Every rating stands in one list: follow the link under the box of the home page.

# A worksheet's own script did not come, or the browser cannot read it.
script-missing = What failed: the file { $file } did not load or did not run.
bar-not-started = No answer: the calculator has not started

new-edition = A new edition is ready. A figure may have been corrected. Your numbers stay as you typed them.
new-edition-take = Reload now
new-edition-later = Later
# What the foot of each page says of this device. `$since` is the date when it was fetched, or none.
kept-safe = Edition { $edition } is kept on this device ({ $megabytes } MB{ $since ->
        [none] {""}
       *[other] , { $since }
    }) and works without a signal.
kept = Edition { $edition } is kept on this device ({ $megabytes } MB{ $since ->
        [none] {""}
       *[other] , { $since }
    }) and works without a signal. The browser may drop it when space runs short.
kept-in-part = Not all of this book is on this device: { $missing } of { $files } files are missing. Open it once where there is a signal.
not-kept = This browser does not keep the book on this device. It works only with a signal.
not-kept-full = There is no room to keep the book on this device: it needs 60 MB. It works only with a signal.
not-kept-no-https = This address is not secure (https), so the book cannot be kept on this device. It works only with a signal.
