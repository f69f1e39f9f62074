# Words of the table design-factors. A key that is not here is looked for in common.ftl.

question = How much margin is in a rating?
description = Design factor (breaking force over working load limit) that rules ask for, by part and source.

## Read before you use it

note-factor-covers-rating-not = The factor covers what a rating does not know: shock, wear, a wrong weight, a poor angle. It is not yours to spend.
note-holds-twice-rating-without-set = Holds twice its rating without set.
note-on-breaking-strength-navy-rule = On breaking strength, navy rule.
note-4-gear-rated-over-10 = 4 where the gear is rated over 10 tons.
note-load-most-20-percent-breaking = Load at most 20 percent of breaking.
note-load-most-10-percent-breaking = Load at most 10 percent of breaking.
note-load-most-25-percent-breaking = Load at most 25 percent of breaking.
note-load-most-fifth-breaking = Load at most one fifth of breaking.
note-with-people-below = With people below.
note-held-grade-relation-four-times = Held by the grade relation: four times the printed limit is 800 N/mm2.
note-held-grade-relation-four-times-printed = Held by the grade relation: four times the printed limit is 1,000 N/mm2.

## Cautions; table.toml says of which kind each is

caution-never-into-the-margin = Never load into the margin.

## Columns

column-item = Part
    .help = What the limit is for.

## Quantities

quantity-design_factor = Design factor
quantity-load_without_set = Load it carries without permanent set
quantity-design_factor_over_people = Design factor over people

## Words of the columns

word-item-sling_general = Any sling
word-item-web_sling_fitting = Web sling fitting
word-item-running_wire_rope = Running wire rope
word-item-rigging_general = Any rigging
word-item-rigging_lifting_people = Rigging that lifts people
word-item-rigging_fatigue_rated_en_1677_1 = Rigging rated for fatigue, EN 1677-1
word-item-running_line = Running line
word-item-non_rotating_hoist_line = Non-rotating hoist line
word-item-tugger_line = Tugger line
word-item-pendant_or_guy_line = Pendant or guy line
word-item-winch_line = Winch line
word-item-natural_fibre_rope_sling = Natural fiber rope sling
word-item-hot_metal_crane_rope = Hot metal crane rope
word-item-crane_rope = Crane rope
word-item-wire_rope = Wire rope
word-item-textile_sling = Textile sling
word-item-metal_sling_part = Metal sling part
word-item-shackle_en_13889 = Shackle, EN 13889
word-item-one_way_lifting_band = One way lifting band
word-item-chain_grade_80 = Chain, grade 80
word-item-chain_grade_100 = Chain, grade 100
word-item-strapping_used_once = Strapping, used once
word-item-strapping_many_lifts = Strapping, many lifts
