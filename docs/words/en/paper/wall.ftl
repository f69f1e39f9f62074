# Words of the charts for the wall and of the pocket cards. What a row is called comes from its table.

ring-means = A small ring marks a value that nobody saw in the text of its source. Go by the mark on the part, or read the source first.

## Heads of columns

head-size = Size
head-grade = Mark on the chain
head-grade-angle = { $grade }, { $angle }°
head-angle = Angle
head-factor = Factor
head-each-leg = Each of 2 legs, { OWN($load) }
head-clips-clips-drop-forged = Forged clips
head-clips-clips-other-material = Other clips
head-clips-spacing = Apart
head-clips-turn-back = Turn back
head-clips-torque = Torque
head-choke-angle = Angle of the choke
head-choke-share = Of the choker rating
head-colour = Color
head-web-straight-0 = Straight
head-web-choke-0 = Choked
head-web-basket-0 = Basket, upright
head-web-basket-0-45 = Basket to 45°
head-web-basket-45-60 = Basket 45 to 60°
head-legs = Legs
head-legs-counted = Legs counted
head-part = Part
head-what = What is measured
head-limit = Limit
head-limit-lb = Limit, lb
head-sight = Out of service
head-heat = Temperature of the chain
head-reduction-while-hot = { $grade }, while hot
head-reduction-afterwards = { $grade }, ever after
head-printed = As printed
head-about = About
head-rule-of = Of what
head-rule = What the law asks
head-width = Width

## Headings

grid-may-lift = May it lift? May it tie down?
    .condition = { ": " }
grid-tie-down = Tie-down: working load limit in lb
grid-one-leg = Lifting: one straight leg, working load limit in lb
grid-two-legs = Two legs of lifting chain, whole sling, in lb
grid-angles = Pull in a leg, by its angle from the horizontal
grid-clips = Clips on a wire rope eye
    .kinds = Forged clips are drop-forged. Other clips are of any other material.
grid-choke = Choker hitch
grid-web = One web or round sling by its color (EN 1492), in metric tons
grid-legs = How many legs carry a stiff load
grid-limits = Out of service at these limits
grid-removal = Out of service at a look
grid-chain-heat = Alloy chain that is or was hot: take this off its limit
grid-sling-heat = Where slings and shackles may work
grid-law = The law of the road in the United States: what it asks
grid-straps = Straps (web tie-downs): working load limit

## Cells

angle-cell = { $angle }°
angle-and-factor = { $angle }°: factor { $factor }
angle-band = { $low } to { $high }°
both-degrees = { $fahrenheit } °F ({ $celsius } °C)
hitch-straight = Straight
hitch-choked = Choked, over 120°
hitch-basket-upright = Basket, upright
hitch-basket = Basket, { PLACES($angle, places: 0) }
hitch-holds = × { PLACES($holds, places: 2) }
choke-general = The choker rating is { $share } of the straight rating where the tag says no other, for a choke of { $low }° and more.
limit-out-at = out at { $limit }
limit-out-over = out over { $limit }
limit-any = any at all
empty = –
    .means = – means that no source read for this book prints a figure.
law-aggregate = Limits added up
law-limit = One limit
law-count = How many
law-heavy-equipment = Heavy machines
law-tie-down = Edges
law-system = Condition
part-body-or-pin = Shackle, body or pin
part-pin = Shackle, pin
part-sling = Wire rope sling

## Sheets

wall-chain = Chain: which grade, what use, what limit
    .never = Never lift with grade 30, 43 or 70, with chain without a mark, or with chain that was welded or heated. The tag on the sling governs.
wall-sling-angles = Sling angles
    .never = Never lift with a leg flatter than { $least }° from the horizontal.
    .said = Two legs drawn at 60, 45 and 30 degrees from the horizontal, with the factor by which each leg pulls more than its share.
wall-hitches = Hitches: straight, choked, basket
    .tag = Go by the tag: it gives the choker and basket rating of that sling.
    .said = One sling put on in five ways, each with how many times its straight rating it holds.
    .basket = Basket angles are from the vertical. The flatter the legs, the harder they pull.
wall-clips = Wire rope clips
    .saddle = The saddle of a clip sits on the live side, the U-bolt on the dead end. Tighten the nuts again after the first load.
    .maker = The maker of the clips may ask for more: then that counts.
wall-inspection = Inspection: when is it out?
    .never = Never weld, heat, bend or grind a part to make it pass. Destroy what is out.
wall-heat = Heat and cold
    .never = A part that was hotter than its limit stays out of use, cold again or not, until its maker says otherwise. Never weld or heat a chain, a hook or a shackle.
wall-tie-down = Tying down a load
    .forces = The count of the law is not always enough: work out the forces on your load as well.
