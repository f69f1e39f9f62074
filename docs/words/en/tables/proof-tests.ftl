# Words of the table proof-tests. A key that is not here is looked for in common.ftl.

question = How hard is new lifting gear proof tested, and by whom?
description = Proof load as a factor on the rating plus an addition, by part, range and source.

## Read before you use it

note-proof-load-rating-factor = Proof load = rating × factor, plus the addition where there is one. Ranges and additions are in the ton of the source; 29 CFR 1919 does not say which ton.
note-range-ends-next-begins = Where one range ends and the next begins the two formulas nearly meet: 2 × 25 t is 50 t, 1.22 × 25 t + 20 t is 50.5 t.
note-before-use-marked-safe-load = Before use; marked with its safe load.
note-before-first-use-keep-dated = Before first use; keep the dated record. A sound hook, not a repaired one.
note-before-first-use-keep-dated-record = Before first use; keep the dated record.
note-before-first-use-keep-certificate = Before first use; keep the certificate.
note-on-the-single-leg-rating = On the single-leg rating.
note-test-load-within-5-percent = Test load within 5 percent below, none above.
note-only-sling-maker-equal-body = Only by the sling maker or an equal body.
note-chain-ring-hook-shackle-swivel = Chain, ring, hook, shackle, swivel of ship gear.
note-when-rating-rope-load = When the rating is the rope load.
note-most-unless-maker-says-otherwise = At most, unless the maker says otherwise.
note-load-once-expected-working-load = Load once to the expected working load, unload, tighten again.
note-without-becket = Without becket.
note-beams-and-frames = Beams and frames.
note-2-0-2-2-times = 2.0 to 2.2 times the rating.
note-1-33-2-times-rating = 1.33 to 2 times the rating.
note-crack-test-every-three-years = Crack test every three years.
note-vertical-rating-each-leg-bridle = On the vertical rating; each leg of a bridle.

## Cautions; table.toml says of which kind each is

caution-pass-gives-no-rating-back = A proof test is for makers and test houses, on sound gear. A pass does not give a rating back to welded, heated, bent or unmarked hardware.

## Columns

column-item = Part
    .help = What the limit is for.
column-load_range = Range
    .help = Range of the rating to which the row applies.

## Quantities

quantity-proof_factor = Proof load, times the rating
quantity-proof_addition = and added to that

## Words of the columns

word-item-custom_lifting_accessory = Custom lifting accessory
word-item-hook_without_maker_data = Hook without maker data
word-item-welded_end_of_wire_rope_sling = Welded end of wire rope sling
word-item-web_sling_after_repair = Web sling after repair
word-item-loose_gear = Loose gear
word-item-single_sheave_block = Block, one sheave
word-item-multi_sheave_block = Block, several sheaves
word-item-hand_chain_block = Hand chain block
word-item-crane_with_gear = Crane with gear
word-item-cargo_gear = Cargo gear
word-item-overhead_crane = Overhead crane
word-item-single_sheave_block_with_becket = Block, one sheave and becket
word-item-lifting_beam = Lifting beam
word-item-chain_sling_periodic = Chain sling, tested again
word-item-wire_rope_sling_navy = Wire rope sling, US Navy
word-load_range-any = Any rating
word-load_range-to_20 = Up to 20 tons
word-load_range-20_to_40 = 20 to 40 tons
word-load_range-over_40 = Over 40 tons
word-load_range-20_to_50 = 20 to 50 tons
word-load_range-over_50 = Over 50 tons
word-load_range-to_25 = Up to 25 t
word-load_range-over_25 = Over 25 t
word-load_range-to_10 = Up to 10 t
word-load_range-10_to_160 = 10 to 160 t
word-load_range-over_160 = Over 160 t
word-load_range-to_150_short_tons = Up to 150 short tons
word-load_range-over_150_short_tons = Over 150 short tons
