# Words that every printed sheet shares: gauges, charts for the wall, cards.

check-the-printer = Check the printer first.
    .stop = Print at 100 % (actual size), not fitted to the page. Measure both lines with a steel rule. If either is off by { $off } or more, which is 1 %, stop: throw this sheet away and print again.
check-line-mm = 100 mm
check-line-in = 4 in
sources-in-text = Sources:
sources-in-copy = Read in a reprint:
sources-in-memory = Not seen in text:
not-a-permission-on-paper = This sheet is no permission to lift. The mark and the tag on the part govern.
more-in-the-book = More in the book: { $page }.
edition-of-sheet = Edition { $number }, tables and code { $letters }
metric-size = { $size } mm
passes-nothing = This sheet can take a part out of service. It cannot pass one: paper and eye are good to 1/2 mm at best. Measure with a caliper before you trust a part.
