# Words of the table eyebolts. A key that is not here is looked for in common.ftl.

question = What may a shoulder eyebolt lift, pulled straight?
description = Straight-pull ratings of shouldered eyebolts: inch sizes in pounds, metric sizes in kilograms.

## Read before you use it

note-straight-pull-only-shoulder = Straight pull only, shoulder tight. Any angle cuts the rating hard: read the maker, and see the eyebolt rules.
note-not-seen-text-standards = Not seen in the text of the standards. The inch ratings stand here because each is 13,000 psi on the section of its coarse thread, the metric ones because they follow the diameter; a test checks both.
note-m30-m36-left-out = M30 and M36 are left out: editions of the standard differ.
note-makers-mark-bolt-governs = The maker’s mark on the bolt governs. No readable mark: it does not lift.

## Cautions; table.toml says of which kind each is

caution-straight-pull-only = A plain eyebolt (no shoulder) takes a straight pull only.
caution-never-make-an-eyebolt = Never weld a nut or eye to make an eyebolt.

## Columns

column-thread = Thread
    .help = Thread size: inches (1/2) or metric (M12).
