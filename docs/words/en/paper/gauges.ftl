# Words of the gauges that are printed at true scale.

## Which chain

chain-size-gauge = Chain gauge: which size is it?
    .said = For each size of chain a white slot as wide as the wire, and black bars as long as a link is inside.
    .never = Never rate a chain by its measure. A chain without a readable grade mark never lifts. DIN 766, DIN 763 (long link) and mid-link chain never lift, marked or not.
chain-size-gauge-step-1 = Lay the straight side of a link in a white slot. The slot that the wire just covers is its size.
chain-size-gauge-step-2 = Lay a link flat over a black bar of that size. The bar whose two ends just touch the inside of the link is its pitch (the inside length).
chain-size-gauge-step-3 = Read the grade mark on the links. The pitch tells short links from long ones. It never tells the grade.
pitch-of-short-link = Lifting chain, grades { $grades }: { $pitch }
pitch-of-din-766 = DIN 766: { $pitch }
pitch-of-mid-link-80 = Mid link: { $pitch }
pitch-of-din-763 = DIN 763: { $pitch }

## Chain wear

chain-wear-gauge = Chain gauge: is the wire worn out?
    .said = For each size of chain a slot as wide as new wire, and a slot as wide as the least that the strictest limit lets stand.
chain-wear-gauge-step-1 = Read the size on the tag, or find it with the gauge of sizes on a link that is not worn.
chain-wear-gauge-step-2 = Swing the next link aside and lay the link flat. Lay its worn end, where the links bear on each other, along the slot “least” of its size. Look straight down.
chain-wear-gauge-step-3 = If you see white on either side of the wire, the chain is out of service. Measure every link that looks thin, not only the first.
wear-new = New wire
wear-least = Least: white seen means out
wear-out-under = out under { $least }

## Chain stretch

chain-stretch-gauge = Chain gauge: is it stretched?
    .said = For each size of lifting chain a starting line, a dashed line at which some links end when new, and a thick line at which they end at the limit.
chain-stretch-gauge-step-1 = This sheet is for short-link lifting chain alone. Hang the chain or pull it straight, and lay so many links of its size along the line.
chain-stretch-gauge-step-2 = Put the inside end of the first link on the starting line at the left. The inside end of the last link should lie at the dashed line.
chain-stretch-gauge-step-3 = If it lies beyond the thick line, the links have grown by more than { $limit }: the chain was overloaded and is out of service. If you wrote its length down when it was new, that record counts before this sheet.
stretch-links = { $size }: lay { $count } links
stretch-lengths = new { $new } mm, out beyond { $out } mm

## Hook throat

hook-throat-gauge = Hook gauge: has the throat opened?
    .said = Two strips to cut out, in inches and in millimeters. The upper edge is a plain ruler. The lower edge has, for each throat as it was when new, the length at which it is out.
    .never = Never bend, heat or weld a hook back. A hook that is bent or twisted at all is out, whatever its throat.
hook-throat-gauge-step-1 = Find what the throat measured when new: on the maker’s sheet, or in your own record from the day you bought it. Without that number this gauge says nothing.
hook-throat-gauge-step-2 = Cut the strip out along its lines and stiffen it with card. The thick line at the left is its zero.
hook-throat-gauge-step-3 = Hold zero against one side of the throat, across the narrowest place.
hook-throat-gauge-step-4 = If the other side reaches the lower mark of the new throat, the hook is out of service: it has opened by { $share }, or by { $most } where that is less.
throat-strip-in = Throat when new, in inches
throat-strip-mm = Throat when new, in millimeters
throat-plain = plain ruler
throat-out = out of service from here

## Sling angle

sling-angle-gauge = Sling angle gauge
    .said = A straight edge with a half circle of angles under it. A weighted thread from the middle of the edge shows the angle of the leg from the horizontal. Less than 30 degrees is shaded.
    .never = Never lift with a leg flatter than { $least }° from the horizontal.
    .doubt = Read it twice, from both sides. A thread and paper are good to about 2°. Near 45° or 30°, measure the leg and its height instead.
sling-angle-gauge-step-1 = Glue the sheet to a board. Cut along the thick edge. Prick the small circle and hang a thread with a nut from it.
sling-angle-gauge-step-2 = Lay the thick edge along the leg, with the half circle below it. Take the slack out first, with no weight in the air and no hand between chain and load.
sling-angle-gauge-step-3 = Let the thread hang free. It crosses the scale at the angle of the leg from the horizontal.
sling-angle-gauge-step-4 = Each leg pulls its share of the weight times the factor.
angle = { $angle }°
angle-edge = Lay this edge along the leg
angle-thread = Thread from the circle
angle-never = Under { $least }°: never
angle-factor = factor { $factor }
angle-careful = under { $careful }°: careful

## Wire rope

wire-rope-gauge = Wire rope gauge: which size is it?
    .said = For each size of wire rope a white slot as wide as the rope.
wire-rope-gauge-step-1 = Lay the rope straight in a slot and look straight down. The slot that the rope just covers is its size.
wire-rope-gauge-step-2 = Measure over the widest place, from the top of one strand to the top of the strand across from it, never over the flats.
wire-rope-gauge-step-3 = Try three places, turned by a quarter. New rope may be a little over its size.
rope-size = { $size } ({ $metric } mm)
rope-loss = Out of service when thinner than its size by more than (measure with a caliper):
rope-loss-line = { $item }: { $loss }
rope-item-rope-to-5-16-in = up to 5/16 in
rope-item-rope-3-8-to-1-2-in = 3/8 to 1/2 in
rope-item-rope-9-16-to-3-4-in = 9/16 to 3/4 in
rope-item-rope-7-8-to-1-1-8-in = 7/8 to 1-1/8 in
rope-item-rope-1-1-4-to-1-1-2-in = 1-1/4 to 1-1/2 in

## Clips

clip-gauge = Wire rope clips: how far apart?
    .said = For each size of rope two lines at the distance between two clips, and under the size how many clips, how long the turn-back and how tight the nuts.
    .maker = The maker of the clips may ask for more: then that counts.
clip-gauge-step-1 = Turn back the rope by the length given. Set the first clip close to the dead end, as its maker says, the next close to the eye, the others between.
clip-gauge-step-2 = The saddle of a clip sits on the live side, which carries the load. The U-bolt sits on the dead end.
clip-gauge-step-3 = Hold the two lines of your size beside the rope: from the middle of one clip to the middle of the next.
clip-gauge-step-4 = Tighten the nuts to the torque given, pull on the eye, and tighten them again.
clip-size = { $size }: { $spacing } apart
clip-size-and-smaller = { $size } and smaller: { $spacing } apart
clip-told = { $size } rope: { $told }
clip-clips-drop-forged = { $value } drop-forged clips
clip-clips-other-material = { $value } clips of other material
clip-turn-back = turn back { $value }
clip-torque = torque { $value }
