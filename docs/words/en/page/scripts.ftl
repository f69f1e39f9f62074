# What the scripts of the page say. All of it is put into every page as data.

rows-shown = { $shown } of { $all } { $all ->
        [one] row
       *[other] rows
    }.
nothing-to-sift = Nothing is printed for this. Set one of the lists back to “all” to see what there is.
pin-source = Source:

search-failed = The search did not load. Every rating stands in one list: follow the link under the box of the home page.

new-edition = A new edition of this handbook is ready. A figure may have been corrected. Your numbers stay as you typed them.
new-edition-take = Reload with the new edition
new-edition-later = Later
kept = This edition is kept on this device and works without a signal.
