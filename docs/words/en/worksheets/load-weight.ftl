# Worksheet load-weight.

title = What does it weigh, and where does it balance?
summary = The weight, with a low and a high figure, and the center of gravity (balance point) of a load that you build from plain shapes.
story = The yard works out the weight of an engine cradle before the lift: a steel base plate with a hole, and an oak bolster.

## What is asked

input-parts = Parts
    .help = One row for each part. Give a hole as a row of its own and say that it is taken away.
    .row = Part
input-parts-label = Name
    .help = Your own word for it.
input-parts-shape = Shape
    .help = The nearest plain shape. Split a hard one into several.
option-parts-shape-plate = Plate
option-parts-shape-disc = Disc (round plate)
option-parts-shape-ring = Ring (flat washer)
option-parts-shape-round-bar = Round bar
option-parts-shape-flat-bar = Flat bar
option-parts-shape-square-bar = Square bar
option-parts-shape-hex-bar = Hexagon bar
option-parts-shape-tube = Pipe or round tube
option-parts-shape-square-tube = Square or rectangular tube
option-parts-shape-angle = Angle
option-parts-shape-channel = Channel
option-parts-shape-i-beam = I-beam
option-parts-shape-cylinder = Cylinder or drum
option-parts-shape-cone = Cone
option-parts-shape-frustum = Cone with its point cut off
option-parts-shape-sphere = Ball
option-parts-shape-hemisphere = Half ball or bowl
option-parts-shape-box = Box or block
option-parts-shape-torus = Ring of round bar
option-parts-shape-dished-head = Dished head (tank end)
option-parts-shape-lump = Known weight
input-parts-material = Made of
    .help = From the density table.
option-parts-material-aluminium = aluminum
option-parts-material-aluminium-alloy-2014-t6-7075-t6 = aluminum alloy 2014-T6, 7075-T6
option-parts-material-aluminium-alloy-6061-t6 = aluminum alloy 6061-T6
option-parts-material-asphalt = asphalt
option-parts-material-brass = brass
option-parts-material-brick-masonry = brick masonry
option-parts-material-bronze = bronze
option-parts-material-cast-iron = cast iron
option-parts-material-concrete-masonry = concrete masonry
option-parts-material-concrete = concrete, any
option-parts-material-concrete-lightweight = concrete, lightweight
option-parts-material-concrete-normal-weight-light-reinforcement = concrete, normal weight, light reinforcement
option-parts-material-concrete-plain = concrete, plain
option-parts-material-concrete-reinforced = concrete, reinforced
option-parts-material-copper = copper
option-parts-material-cork = cork
option-parts-material-douglas-fir-air-dry = Douglas fir, air dry
option-parts-material-douglas-fir-larch = Douglas fir-larch
option-parts-material-ethyl-alcohol = ethyl alcohol
option-parts-material-gasoline = gasoline
option-parts-material-glass = glass
option-parts-material-glycerin = glycerin
option-parts-material-gold = gold
option-parts-material-granite = granite
option-parts-material-granite-stone-piled = granite stone (piled)
option-parts-material-granite-marble-quartz = granite, marble, quartz
option-parts-material-gravel-dry = gravel, dry
option-parts-material-gypsum-board = gypsum board
option-parts-material-hem-fir = hem-fir
option-parts-material-ice = ice
option-parts-material-lead = lead
option-parts-material-limestone-sandstone = limestone, sandstone
option-parts-material-magnesium-alloys = magnesium alloys
option-parts-material-masonry-grout = masonry grout
option-parts-material-mercury = mercury
option-parts-material-mixed-oak = mixed oak
option-parts-material-nickel-copper-alloy-67-ni-30-cu = nickel-copper alloy (67 Ni 30 Cu)
option-parts-material-nickel = nickel
option-parts-material-nylon = nylon
option-parts-material-oak-air-dry = oak, air dry
option-parts-material-olive-oil = olive oil
option-parts-material-oriented-strand-board = oriented strand board
option-parts-material-plywood = plywood
option-parts-material-polyethylene = polyethylene
option-parts-material-polystyrene = polystyrene
option-parts-material-rubber = rubber
option-parts-material-sand-dry = sand, dry
option-parts-material-sand-soil-gravel = sand, soil, gravel
option-parts-material-sandstone-piled = sandstone (piled)
option-parts-material-silver = silver
option-parts-material-snow-compacted = snow, compacted
option-parts-material-snow-freshly-fallen = snow, freshly fallen
option-parts-material-snow-slightly-compacted = snow, slightly compacted
option-parts-material-snow-soft = snow, soft
option-parts-material-southern-pine-air-dry = southern pine, air dry
option-parts-material-southern-yellow-pine = southern yellow pine
option-parts-material-spruce-pine-fir = spruce-pine-fir
option-parts-material-spruce-pine-fir-south = spruce-pine-fir south
option-parts-material-stainless-steel = stainless steel
option-parts-material-steel = steel
option-parts-material-titanium = titanium
option-parts-material-tungsten = tungsten
option-parts-material-uranium = uranium
option-parts-material-water-fresh = water, fresh
option-parts-material-water-sea = water, sea
option-parts-material-wood = wood, any
option-parts-material-zinc = zinc
input-parts-count = How many
    .help = How many parts are alike. Give the place of their common middle below.
input-parts-length = Length
    .help = The longest way.
input-parts-width = Width
    .help = Across. On an angle, the leg that lies flat.
input-parts-depth = Depth
    .help = Height of the section. On an angle, the leg that stands up.
input-parts-height = Height
    .help = Straight up from its base. The height of a two-to-one dished head is a quarter of its outside diameter.
input-parts-thickness = Thickness
    .help = Measure it with calipers; do not trust the name.
input-parts-diameter = Diameter
    .help = Over the outside. On a ring of round bar, the diameter of the bar.
input-parts-outside_diameter = Outside diameter
    .help = Over the outside. A 2 in pipe is 2-3/8 in over the outside.
input-parts-inside_diameter = Inside diameter
    .help = Across the hole.
input-parts-bottom_diameter = Bottom diameter
    .help = At the base.
input-parts-top_diameter = Top diameter
    .help = At the other end.
input-parts-mean_diameter = Mean diameter
    .help = From bar center to bar center, straight across the ring.
input-parts-wall = Wall
    .help = Thickness of the wall. If you leave it empty, a ball, drum or box counts as solid.
input-parts-side = Side
    .help = One side of the square.
input-parts-across_flats = Across flats
    .help = Across two opposite flats, where a wrench grips.
input-parts-flange_width = Flange width
    .help = Across the top.
input-parts-web_thickness = Web thickness
    .help = The plate between the flanges.
input-parts-flange_thickness = Flange thickness
    .help = At the middle of the flange's overhang.
input-parts-weight_per_length = Weight by the foot
    .help = From the name of the section: W8×31 weighs 31 lb/ft. With it you need no sizes of the section.
input-parts-weight = Weight of one
    .help = From a plate, a book or a scale.
input-parts-at = Where its middle is
    .help = From any corner you choose: right, back, up. Give the middle of the box that would just hold it. If you leave it empty, the center of gravity is not worked out.
input-parts-along = Its length or axis points
    .help = If you leave it empty, bars lie to the right, and round parts and plates stand up.
option-parts-along-x = to the right (x)
option-parts-along--x = to the left
option-parts-along-y = to the back (y)
option-parts-along--y = to the front
option-parts-along-z = up (z)
option-parts-along--z = down
input-parts-minus = Take it away (a hole)
    .help = Yes for holes and cut-outs.
input-parts-tolerance = Allowance either way
    .help = How far the weight can be off, for thickness, welds and small parts. 2% for cut steel is our own figure and not that of a standard.
input-solid = Or drop a drawn solid (STL)
    .help = ASCII or binary STL of a closed solid, up to 12 MB. It stays on your device.
input-solid_unit = One unit of the drawing is
    .help = The file does not say. Compare the size that the working shows.
option-solid_unit-mm = a millimeter
option-solid_unit-cm = a centimeter
option-solid_unit-m = a meter
option-solid_unit-in = an inch
option-solid_unit-ft = a foot
input-solid_material = The solid is made of
    .help = From the density table.
option-solid_material-aluminium = { option-parts-material-aluminium }
option-solid_material-aluminium-alloy-2014-t6-7075-t6 = { option-parts-material-aluminium-alloy-2014-t6-7075-t6 }
option-solid_material-aluminium-alloy-6061-t6 = { option-parts-material-aluminium-alloy-6061-t6 }
option-solid_material-asphalt = { option-parts-material-asphalt }
option-solid_material-brass = { option-parts-material-brass }
option-solid_material-brick-masonry = { option-parts-material-brick-masonry }
option-solid_material-bronze = { option-parts-material-bronze }
option-solid_material-cast-iron = { option-parts-material-cast-iron }
option-solid_material-concrete-masonry = { option-parts-material-concrete-masonry }
option-solid_material-concrete = { option-parts-material-concrete }
option-solid_material-concrete-lightweight = { option-parts-material-concrete-lightweight }
option-solid_material-concrete-normal-weight-light-reinforcement = { option-parts-material-concrete-normal-weight-light-reinforcement }
option-solid_material-concrete-plain = { option-parts-material-concrete-plain }
option-solid_material-concrete-reinforced = { option-parts-material-concrete-reinforced }
option-solid_material-copper = { option-parts-material-copper }
option-solid_material-cork = { option-parts-material-cork }
option-solid_material-douglas-fir-air-dry = { option-parts-material-douglas-fir-air-dry }
option-solid_material-douglas-fir-larch = { option-parts-material-douglas-fir-larch }
option-solid_material-ethyl-alcohol = { option-parts-material-ethyl-alcohol }
option-solid_material-gasoline = { option-parts-material-gasoline }
option-solid_material-glass = { option-parts-material-glass }
option-solid_material-glycerin = { option-parts-material-glycerin }
option-solid_material-gold = { option-parts-material-gold }
option-solid_material-granite = { option-parts-material-granite }
option-solid_material-granite-stone-piled = { option-parts-material-granite-stone-piled }
option-solid_material-granite-marble-quartz = { option-parts-material-granite-marble-quartz }
option-solid_material-gravel-dry = { option-parts-material-gravel-dry }
option-solid_material-gypsum-board = { option-parts-material-gypsum-board }
option-solid_material-hem-fir = { option-parts-material-hem-fir }
option-solid_material-ice = { option-parts-material-ice }
option-solid_material-lead = { option-parts-material-lead }
option-solid_material-limestone-sandstone = { option-parts-material-limestone-sandstone }
option-solid_material-magnesium-alloys = { option-parts-material-magnesium-alloys }
option-solid_material-masonry-grout = { option-parts-material-masonry-grout }
option-solid_material-mercury = { option-parts-material-mercury }
option-solid_material-mixed-oak = { option-parts-material-mixed-oak }
option-solid_material-nickel-copper-alloy-67-ni-30-cu = { option-parts-material-nickel-copper-alloy-67-ni-30-cu }
option-solid_material-nickel = { option-parts-material-nickel }
option-solid_material-nylon = { option-parts-material-nylon }
option-solid_material-oak-air-dry = { option-parts-material-oak-air-dry }
option-solid_material-olive-oil = { option-parts-material-olive-oil }
option-solid_material-oriented-strand-board = { option-parts-material-oriented-strand-board }
option-solid_material-plywood = { option-parts-material-plywood }
option-solid_material-polyethylene = { option-parts-material-polyethylene }
option-solid_material-polystyrene = { option-parts-material-polystyrene }
option-solid_material-rubber = { option-parts-material-rubber }
option-solid_material-sand-dry = { option-parts-material-sand-dry }
option-solid_material-sand-soil-gravel = { option-parts-material-sand-soil-gravel }
option-solid_material-sandstone-piled = { option-parts-material-sandstone-piled }
option-solid_material-silver = { option-parts-material-silver }
option-solid_material-snow-compacted = { option-parts-material-snow-compacted }
option-solid_material-snow-freshly-fallen = { option-parts-material-snow-freshly-fallen }
option-solid_material-snow-slightly-compacted = { option-parts-material-snow-slightly-compacted }
option-solid_material-snow-soft = { option-parts-material-snow-soft }
option-solid_material-southern-pine-air-dry = { option-parts-material-southern-pine-air-dry }
option-solid_material-southern-yellow-pine = { option-parts-material-southern-yellow-pine }
option-solid_material-spruce-pine-fir = { option-parts-material-spruce-pine-fir }
option-solid_material-spruce-pine-fir-south = { option-parts-material-spruce-pine-fir-south }
option-solid_material-stainless-steel = { option-parts-material-stainless-steel }
option-solid_material-steel = { option-parts-material-steel }
option-solid_material-titanium = { option-parts-material-titanium }
option-solid_material-tungsten = { option-parts-material-tungsten }
option-solid_material-uranium = { option-parts-material-uranium }
option-solid_material-water-fresh = { option-parts-material-water-fresh }
option-solid_material-water-sea = { option-parts-material-water-sea }
option-solid_material-wood = { option-parts-material-wood }
option-solid_material-zinc = { option-parts-material-zinc }

## What is found

result-weight = Weight
result-weight_low = Low figure
result-weight_high = High figure: use this one
result-centre_x = Center of gravity, to the right
result-centre_y = Center of gravity, to the back
result-centre_z = Center of gravity, up
result-parts = Weight of each part

## The name of a part

part = { $name }{ $count ->
        [1] { "" }
       *[other] { " " }× { $count }
    }
part-by-number = { $shape }, row { $number }
drawn-solid = Drawn solid
part-line = { $taken ->
        [yes] { $part }, taken away: { $plain }
       *[no] { $part }: { $plain }
    }

## The headline and the cautions

opening = It weighs about { $weight }.

reason-hardly-a-range =
    .headline = Add mud, water and anything else that is on it before you lift.
reason-a-range =
    .headline = Use the high figure, { $weight_high }, to choose the sling. It is very unlikely to be lighter than { $weight_low }.
reason-weigh-it =
    .caution = Use the high figure, { $weight_high }, to choose the sling. If it is near any limit, weigh the load. A load cell shows the true weight as soon as the load is an inch off the floor.
reason-rigging-not-in-it =
    .caution = The sling, its shackles and any beam are not in this weight, nor in the load that goes on to another worksheet. Add their weight there.
reason-could-be-wrong =
    .caution = The estimate leaves out thicker plate, weld metal, paint, brackets that are not drawn, fluids, water, mud and ice. Add each as a part of known weight. A load that sticks in mud or ice, or is still bolted down, can pull many times its weight before it comes free. Free it first.
reason-holds-water =
    .caution = A hollow part can hold water or oil. Drain it, or add what it can hold. A fluid that runs to one side moves the center of gravity.
reason-sharp-corners =
    .caution = Rolled sections are worked out with sharp corners and even flanges. The weight by the foot from the mill is more exact.
reason-wet-timber =
    .caution = Timber that is wet or green can weigh half as much again as dry timber. Weigh a cut piece.
reason-taken-as-exact =
    .caution = A part without an allowance is taken as exact, but only a weighed part is.

## The working

weighed = { $plain }; { OWN($low) } to { OWN($high) }
part-as-weighed = { $taken ->
        [yes] Take away: { $part }
       *[no] { $part }
    }
volume-and-density = { OWN($volume) } × { OWN($density) } ({ $material })

step-part-given = { part-as-weighed }
    .formula = given
    .result = { weighed }
step-part-by-length = { part-as-weighed }
    .formula = weight by length × length
    .numbers = { OWN($per_length) } × { OWN($length) }
    .result = { weighed }
step-part-by-volume = { part-as-weighed }
    .formula = volume × density
    .numbers = { volume-and-density }
    .result = { weighed }
step-part-drawn = Drawn solid of { $triangles } triangles, { OWN($x) } × { OWN($y) } × { OWN($z) } over all
    .formula = volume × density
    .numbers = { volume-and-density }
    .result = { weighed }
step-together = All together
    .formula = sum of the parts
    .numbers = { $terms }
    .result = { $weight }
term-first = { OWN($term) }
term-more = + { OWN($term) }
term-less = − { OWN($term) }
step-range = How wrong it may be
    .formula = lowest and highest density, thinnest and thickest
    .numbers = { $low } to +{ $high }
    .result = { $weight_low } to { $weight_high }
step-balance = Center of gravity, { $axis }
    .formula = sum of weight × place / sum of weights
    .numbers = ({ $moments }) / { OWN($weight) }
    .result = { $place }
moment = { OWN($term) } × { OWN($arm) }

## Why a result is absent

absent-places-missing = give the place of each part to find it

## Refusals

refused-no-rows = has no rows. Give at least one part, or a drawn solid.
refused-all-taken-away = takes away as much as there is. Check which rows are to be taken away.
refused-size-missing = is missing. This shape needs it: { $shape }.
refused-size-or-weight-missing = is missing. This shape needs it: { $shape }. Or give the weight by the foot.
refused-section-against-weight = does not agree with the sizes of the section. Look the section up again, or leave its sizes out.
refused-balances-outside = would balance outside all of the parts, so something is taken away where there is nothing. Check the place of each part.
refused-material-missing = is missing. Pick what it is made of, such as steel.
refused-unit-missing = is missing: the file holds bare numbers. Say what one unit of its drawing is, such as mm.

refused-not-under-outside-diameter = must be less than the outside diameter.
refused-not-under-both-legs = must be less than both legs.
refused-not-under-flange-width = must be less than the flange width.
refused-not-under-half-depth = must be less than half the depth.
refused-not-under-half-diameter = must be less than half the diameter.
refused-not-under-half-diameter-and-length = must be less than half the diameter and half the length.
refused-not-under-half-outside-diameter-and-height = must be less than half the outside diameter and the height.
refused-not-under-half-smallest-side = must be less than half the smallest side.
refused-over-half-outside-diameter = must be at most half the outside diameter.
refused-over-half-smaller-side = must be at most half the smaller side.
refused-over-mean-diameter = must be at most the mean diameter.

refused-solid-empty = is empty. Give an STL file of a closed solid.
refused-solid-too-large = is too large: { $size } MB. Give an STL file of up to { $limit } MB.
refused-solid-foreign = is neither an ASCII nor a whole binary STL file. Save it again as STL.
refused-solid-corner-unreadable = has a corner that cannot be read: “{ $line }”.
refused-solid-corner-not-finite = has a corner that is not a finite number. Save it again as STL.
refused-solid-cut-off = is cut off in the middle of a triangle. Save it again as STL.
refused-solid-without-triangles = holds no triangles. Give an STL file of a closed solid.
refused-solid-flat = holds no volume: its skin lies flat. Give an STL file of a closed solid.
refused-solid-doubled = has triangles that stand in it more than once ({ $triangles }): it would be weighed more than once. Take the copy out in the drawing program.
refused-solid-nested-alike = has a body inside a body, and nobody can tell whether the inner one is a hollow or is drawn in twice. Turn the skin of a hollow inward in the drawing program, or take the inner body out.
refused-solid-too-many-shells = holds { $shells } separate bodies, more than { $limit }. Join them in the drawing program, or give a few at a time.
refused-solid-open = is not closed: { $edges } edges have no partner. Repair the solid in the drawing program, or build it from plain shapes.

## The drawing

figure-part = { $number }: { $part }
figure-seen = To scale, { $view ->
        [above] from above
       *[front] from the front
    }, each part as the box that holds it: { $names }{ $more ->
        [0] { "" }
       *[other] { " " }and { $more } more
    }. Together { $total }.
figure = { figure-seen } The center of gravity lies { $x } to the right, { $y } to the back and { $z } up from your corner.
figure-unplaced = { figure-seen } The center of gravity is not drawn, because you did not give the places of the parts.
