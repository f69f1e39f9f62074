# Words of the table eyebolts. A key that is not here is looked for in common.ftl.

question = What may a shoulder eyebolt lift?
description = Ratings of shouldered eyebolts: inch sizes in pounds, pulled straight; metric sizes in kilograms, straight and on two legs to 45°.

## Read before you use it

note-straight-pull-only-shoulder = Straight pull, shoulder tight, unless a column says an angle. Any other angle takes much of the rating: read the maker's sheet, and see the eyebolt rules.
note-fifth-leads = Inch sizes: one fifth of the breaking strength leads here. ASTM A489 prints a higher capacity, only 3.7 to 4.4 times below breaking; it stands beside it. 1-1/4 and 1-1/2 in were recalled.
note-two-schools = There are two standards, which must not be mixed. American rules leave little at 45°; DIN 580 leaves seven tenths for its own bolts. Go by the standard on the bolt and never read between two angles.
note-side-pull-not-shown = No figure stands here for a pull over 45° from the shank.
note-fifth-of-breaking = One fifth of the least breaking strength.
note-lower-than-a-fifth = Recalled; a fifth of the breaking strength is 420. The lower stands.
note-below-five = Less than five times below breaking: not the figure to lift by.
note-makers-mark-bolt-governs = The maker’s mark on the bolt governs. Without a readable mark it does not lift.

## Cautions; table.toml says of which kind each is

caution-straight-pull-only = A plain eyebolt (no shoulder) takes a straight pull only.
caution-never-make-an-eyebolt = Never weld a nut or eye to make an eyebolt.

## Columns

column-thread = Thread
    .help = Thread size: inches (1/2) or metric (M12).
column-pull = Pull
    .help = Straight along the shank, or on two legs up to 45° from it, for each bolt.

## Quantities

quantity-printed_capacity = Capacity as printed

## Words of the columns

word-pull-axial = Straight
word-pull-to_45 = Two legs to 45°, each bolt
