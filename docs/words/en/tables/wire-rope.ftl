# Words of the table wire-rope. A key that is not here is looked for in common.ftl.

question = How strong is wire rope, and what may a rope sling lift?
description = Nominal breaking force of 6x19 wire rope, and rated loads of slings made of it, by size.

## Read before you use it

note-slings-pressed-loops-straight = For slings with pressed loops. Straight up counts 0.95 of the strength over 5, a choke 0.70 of it over 5. Hand-tucked loops are rated lower.
note-eips-figures-were-not = The EIPS figures were not seen in text. They stand here because strength follows the square of the diameter within 3% and both factors fit every row.
note-eips-extra-improved-plow = EIPS is extra improved plow steel, IPS improved plow steel. Wire core: the middle of the rope is a wire rope itself (IWRC).
note-improved-plow-steel-grade-below = Improved plow steel, one grade below extra improved.

## Cautions; table.toml says of which kind each is

caution-no-tag-no-lift = The tag on the sling governs. No tag, no lift.
caution-tight-bend = Rope bent round a pin of its own thickness loses half its strength: see what a tight bend takes.

## Columns

column-rope = Rope
    .help = Construction, steel and core.

## Quantities

quantity-nominal_breaking_force = Nominal breaking force
quantity-sling_vertical = Sling vertical
quantity-sling_choker = Sling choker

## Words of the columns

word-rope-6x19_eips_iwrc = 6x19 EIPS, wire core
word-rope-6x19_ips_iwrc = 6x19 IPS, wire core
