# Words of the table tie-down-numbers. A key that is not here is looked for in common.ftl.

question = Which numbers decide a tie-down?
description = Shares of weight, counts and lengths from the federal tie-down rules.

## Read before you use it

note-or-part-of-it = Or part of it.

## Columns

column-item = Part
    .help = What the limit is for.

## Quantities

quantity-forward_share_of_weight = Forward, share of the weight
quantity-rearward_share_of_weight = Backward, share of the weight
quantity-sideways_share_of_weight = Sideways, share of the weight
quantity-downward_share_of_weight = Downward, share of the weight
quantity-required_share_of_weight = At least, share of the weight
quantity-counted_share_of_limit = Counts, share of its limit
quantity-counted_share_of_strength = Counts, share of its strength
quantity-resisted_share_of_weight = Holds, share of the weight on it
quantity-tie_downs = Tie-downs
quantity-length_at_most = Length, at most
quantity-weight_at_most = Weight, at most
quantity-tie_downs_for_first = Tie-downs to begin with
quantity-one_more_per = One more for each further
quantity-one_per = One for each
quantity-weight_at_least = Weight, from

## Words of the columns

word-item-breaking_strength = Braking and swerving, not past breaking strength
word-item-working_load_limit = Braking and swerving, within the working load limit
word-item-hold_down = Held down
word-item-aggregate = All tie-downs together
word-item-direct = From truck to load
word-item-same_side = Round the load, back to the same side
word-item-other_side = Over the load to the other side
word-item-unmarked_wire_rope = Wire rope without a mark
word-item-friction_mat = Friction mat
word-item-short_light = Load up to 5 ft, light
word-item-short_heavy = Load up to 5 ft, heavy
word-item-medium = Load over 5 ft, up to 10 ft
word-item-long = Load over 10 ft
word-item-blocked = Load blocked in front
word-item-heavy_equipment = Machines
word-item-coil = Metal coils
word-item-light_vehicle = Cars, light trucks, vans
