# What the scripts of the page say. All of it is put into every page as data.

rows-shown = { $shown } of { $all } { $all ->
        [one] row
       *[other] rows
    }.
nothing-to-sift = Nothing is printed for this. Set one of the lists back to “all” to see what there is.
pin-source = Source:

no-rating-but-a-page = No rating goes by all of these words. A page that does:
no-rating-with = No rating is printed with “{ $word }” in it. Nearest:
no-rating = No rating is printed for this. Try the size and the grade alone, such as 3/8 g70, or Find to search every page.
more-ratings = { $count } more. Add a grade, a size or a number of legs.

new-edition = A new edition of this handbook is ready. A figure may have been corrected. Your numbers stay as you typed them.
new-edition-take = Reload with the new edition
new-edition-later = Later
kept = This edition is kept on this device and works without a signal.
