# Words of the table shackles. A key that is not here is looked for in common.ftl.

question = What may a shackle carry?
description = Working load limits of forged shackles by bow size: grade A (carbon) and grade B (alloy).

## Read before you use it

note-size-diameter-bow-not = The size is the diameter of the bow, not of the pin. The pin is one step larger.
note-grade-carbon-steel-grade = Grade A is carbon steel, grade B alloy. Only the mark on the bow tells which: without one, do not take it for grade B.
note-read-in-reprints = Read in a sheet (grade A) and a supplier's load chart (grade B) that name RR-C-271, not in its own text. Printed breaking loads bear out three sizes of grade A, a second chart four of grade B: 3/4 to 1-1/8 in.
note-grade-b-above-not-read = Grade B above 1-1/2 in: no number was read, so none stands here. Read RR-C-271, or the limit on the bow.
note-tonnes-or-short-tons = Short tons of 2,000 lb. European sheets print the same numbers of grade A in tonnes, a tenth more: count the short ton unless the mark says otherwise.
note-most-shackles-carry-their = Most shackles carry their limit on the bow. That number governs.
note-recalled-2-2-3-short = Also recalled as 2-2/3 short tons; the lower stands.
note-recalled-3-1-3-short = Also recalled as 3-1/3 short tons; the lower stands.
note-grade-letter-not-shown-load = The grade letter was not shown; the load is exactly five times the grade A limit.

## Cautions; table.toml says of which kind each is

caution-pull-in-line = Ratings are for a pull in line, bow to pin. See the side-load rules.
caution-never-a-bolt-for-the-pin = Never put a bolt in place of the pin.

## Columns

column-pin_in = Pin
    .help = Pin diameter in inches.

## Charts

chart-limit =
    .up = Working load limit, short tons
    .across = Bow size, in
    .title = Working load limit, short tons, against bow size, in
