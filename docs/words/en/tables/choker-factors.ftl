# Words of the table choker-factors. A key that is not here is looked for in common.ftl.

question = What does a tight choke take from a sling?
description = Share of the choker rating left by the angle of the choke, wire rope and web slings.

## Read before you use it

note-angle-choke-inside-bend = The angle of choke is the one inside the bend. A sling left to itself settles at about 120 to 135° (common practice, no source).
note-choker-rating-tag-governs = The choker rating on the tag governs: take the share from that.
note-five-shares-were-not = The five shares were not seen in text. They fall in even steps.
note-us-navy-text-rates = A US Navy text rates any choker of 45° or more at three quarters of the vertical rating.
note-over-120-degrees = Over 120 degrees.
note-45-degrees-more-below-text = 45 degrees or more. Below that the text does not recommend it.

## Cautions; table.toml says of which kind each is

caution-no-hammering = Do not hammer a choke down: it cuts the rating.

## Columns

column-choke_angle_from = Choke angle from
    .help = Least angle of choke.
    .range = Choke angle
column-choke_angle_to = Choke angle to
    .help = Greatest angle of choke.

## Quantities

quantity-share_of_choker_rating = Share of choker rating
quantity-share_of_vertical_rating = Share of vertical rating
