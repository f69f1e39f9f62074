# Words of the table wire-rope-limits. A key that is not here is looked for in common.ftl.

question = When is a wire rope sling finished?
description = Broken wires, wear and loss of diameter at which a wire rope goes out of use, by source.

## Read before you use it

note-kink-crush-birdcage-heat = A kink, a crush, a birdcage, heat damage, rust pits or a damaged end fitting removes a rope from service at once.
note-scattered-over-one-lay = Scattered over one lay.
note-of-the-original-wire-diameter = Of the original wire diameter.
note-visible-more-than-this = Of all wires, visible, more than this.
note-of-all-wires = Of all wires.
note-more-than-this = More than this.
note-rust-wear-broken-wires-strain = By rust, wear, broken wires or strain.
note-section-american-law-lets-no = Of the section. American law lets no cut pass.

## Cautions; table.toml says of which kind each is

caution-gloves = Wear gloves, because broken wires cut.
caution-cut-up-not-put-back = Cut up a rope that was removed from service. Do not put it back.

## Columns

column-item = Part
    .help = What the limit is for.

## Quantities

quantity-broken_wires_in_one_lay = Broken wires in one lay
quantity-broken_wires_in_one_strand_in_one_lay = Broken wires in one strand in one lay
quantity-outer_wire_wear = Outer wires worn, share of their thickness
quantity-broken_wires_in_eight_diameters = Broken wires in eight diameters
quantity-diameter_loss_with_lay_stretch = Diameter loss with lay stretch
quantity-diameter_loss_even = Diameter loss even
quantity-broken_wires_in_one_lay_past_end_fitting = Broken wires in one lay past end fitting
quantity-broken_wires_at_end_fitting = Broken wires at end fitting
quantity-diameter_loss = Diameter loss
quantity-strength_lost = Strength lost
quantity-cut_or_broken_yarn = Cut or broken yarn

## Words of the columns

word-item-construction_rope = Construction rope
word-item-ship_rope = Ship rope
word-item-running_rope = Running rope
word-item-standing_rope = Standing rope
word-item-rope_to_5_16_in = Rope up to 5/16 in
word-item-rope_3_8_to_1_2_in = Rope 3/8 to 1/2 in
word-item-rope_9_16_to_3_4_in = Rope 9/16 to 3/4 in
word-item-rope_7_8_to_1_1_8_in = Rope 7/8 to 1-1/8 in
word-item-rope_1_1_4_to_1_1_2_in = Rope 1-1/4 to 1-1/2 in
word-item-any_rope = Any rope
