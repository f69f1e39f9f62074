# Words of the table chain-tie-down. A key that is not here is looked for in common.ftl.

question = What may chain hold on a truck?
description = Working load limits of tie-down chain by grade and size, as United States federal law prints them, in pounds and kilograms.

## Read before you use it

note-maker-marked-limit-mark = Where the maker marked a limit, that mark counts, even where it differs from the table (393.108(b)).
note-welded-steel-chain-no = Welded steel chain with no readable mark counts as grade 30 in the United States (49 CFR 393.108(d)). In Canada it counts as nothing: there the maker must have marked a limit (NSC Standard 10, section 11(4)).
note-5-16-grade-80 = 5/16 in grade 80 (4,500 lb) stands below 5/16 in grade 70 (4,700 lb). That is how the law prints it: the two chains have different wire.
note-law-prints-nothing-7 = The law prints nothing for 7/16 in grade 80 and grade 100.
note-7-16-grade-30 = 7/16 in grade 30 was read as 3,700 lb in three reprints of the law. An older list has 3,500 lb.
note-pounds-kilograms-printed-source = Pounds and kilograms are both printed by the source; each was rounded by itself.
note-read-three-reprints = Read so in three reprints.

## Cautions; table.toml says of which kind each is

caution-weakest-part = An assembly is as strong as its weakest part: binder, hook and anchor point too.

## Columns

column-grade_name = Grade name
    .help = Trade name of the grade.

## Words of the columns

word-grade_name-proof_coil = Proof coil
word-grade_name-high_test = High test
word-grade_name-transport = Transport
word-grade_name-alloy = Alloy

## Charts

chart-limit =
    .up = Working load limit to tie down, lb
    .across = Chain size, in
    .title = Working load limit to tie down, lb, against chain size, in
