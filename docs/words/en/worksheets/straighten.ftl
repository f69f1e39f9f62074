# Worksheet straighten.

title = How far past straight do I press a bent plate or bar?
summary = A bent plate or bar of plain steel pressed or pulled straight (cold straightening): springback, how far past straight, what stays after each push, force at first yield, plastic moment, and what table and chain bear. A study aid.
story = The yard presses a bent chainplate blank, a flat of plain steel that lifts nothing yet, with its two-ton ram.

## What is asked

input-part = What is bent
    .help = A bent part of lifting or tie-down gear goes to scrap.
option-part-plain-part = A plate or bar that lifts and ties down nothing
option-part-lifting-part = A part of lifting or tie-down gear
input-steel = Its steel
    .help = Know it by its mark or certificate, and not by its looks.
option-steel-plain = Plain structural steel, and I know that it is
option-steel-unknown = I do not know
option-steel-quenched-and-tempered = Quenched and tempered: wear plate, high-strength plate, alloy
option-steel-hardened = Hardened: tool, spring, shaft or cutting edge
input-yield_strength = Yield strength
    .help = From its certificate. Plain structural steel: 36,000 psi (ASTM A36), if you know that it is that.
input-shape = Section
option-shape-flat = Plate or flat, lying on its flat side
option-shape-round-bar = Round bar
input-thickness = Thickness
    .help = In the direction of the push.
input-width = Width
    .help = Across the push.
input-diameter = Diameter
    .help = With calipers.
input-span = Between the supports
    .help = From the middle of one support to the middle of the other.
input-bow = Bow over that length
    .help = The largest gap under a straightedge from support to support.
input-bend = How it is bent
option-bend-even = In a long, even bow
option-bend-sharp = With a sharp bend or kink
input-inside_radius = Inside radius of the sharp bend
    .help = Against a drill or a washer. A crease has none: 0.
input-straightened_before = Straightened at this place before
option-straightened_before-no = never
option-straightened_before-once = once
option-straightened_before-more = twice or more often
input-cracks = Cracks, seen with a glass or dye
option-cracks-none = none
option-cracks-some = one, or I am not sure
input-method = How it is moved
option-method-press = A ram presses its middle down
option-method-pull = A chain pulls its middle down to the table
input-room = Room under straight
    .help = From the straight line between the supports down to what the middle meets. On a bare table: 0.
input-table_made = Press or table
option-table_made-rated = A press with a plate that gives its capacity
option-table_made-own = A table or frame of my own
input-ram_capacity = Capacity of the ram, from its plate
    .help = The most that it can push, whatever you mean to push.
input-ram_bore = Bore of the ram
    .help = For the pressures, and for the oil.
input-chain_rating = Rating of the chain and what goes with it
    .help = The lowest of chain, hook and shackle, with a mark that you can read.
input-chain_wire = Thickness of the chain's link
input-chain_length = Length of the chain
input-oil_volume = Oil in ram and hose
    .help = For the energy in it.
input-table_give = The table gives way by
    .help = How far it moves at the push, measured from the floor.

## What is found

result-over_bend_from = Springs back at least
result-over_bend_to = Springs back at most
result-travel_from = Movement from first touch, at least
result-travel_to = Movement from first touch, at most
result-pushes = What is left after each push
column-pushes-past = Press past straight by
column-pushes-soft = Bow left, if its yield strength is as given
column-pushes-hard = Bow left, if it is as strong as it can be
row-pushes = { $past } past straight leaves { $soft } to { $hard }
result-first_travel = Movement before any bend stays
result-first_force = Force at first yield
result-hinge_force = Force at which the middle keeps bending (plastic hinge)
result-force_at_most = Force that it can need at most
result-forces = What stays after each force
column-forces-push = Push
column-forces-pressure = Gauge
column-forces-moves = Middle moves
column-forces-stays = Of that stays
row-forces = { $push } moves it { $moves }, and { $stays } of that stays
result-left_at_most = Bow left if you press it onto what is under it, at most
result-must_bear = Force on supports, table and chain together
result-each_support = Force on each support
result-table_moment = Bending moment in a table from support to support
result-yield_moment = Moment of first yield
result-plastic_moment = Plastic moment
result-yielded_length = Length that yields
result-strain = Stretch of the outside of the sharp bend
result-stored_energy = Energy stored, at least
result-in_piece = Energy in the piece
result-in_chain = Energy in the chain
result-in_oil = Energy in the oil
result-in_frame = Energy in the table

bow-left = { $by }
bent-the-other-way = { $by } the other way
runs = { $from_here } and more: it keeps bending

## The headline and the cautions

how-far = Press the middle past straight, in steps, and let it come up after each step. At the end it goes { $over_bend_from } to { $over_bend_to } past straight.
how-hard = It begins to yield at { $first_force }. At { $hinge_force } the middle keeps bending with no more force, and hard steel can need { $force_at_most }.
no-straightening = Do not straighten this.
not-yet = Do not press yet.

reason-lifting-part =
    .headline = { no-straightening } A bent part of lifting or tie-down gear goes to scrap.
    .caution = Never straighten a hook, a shackle, a link, a ring, a pin or a lug. Destroy it, so that nobody else uses it.
reason-hardened-steel =
    .headline = { no-straightening } Hardened steel breaks before it bends, and pieces fly.
    .caution = Do not press hardened steel straight in a shop. No figure here is for it.
reason-tempered-steel =
    .headline = { no-straightening } Quenched and tempered steel springs back far, cracks, and loses its strength in a flame.
    .caution = The mill of quenched and tempered steel says how it may be straightened, if at all. No figure here is for it.
reason-steel-not-known =
    .headline = { not-yet } You have not said what steel it is. Hard steel breaks.
    .caution = Find the mark or the certificate of the steel. A spark test or a file can only tell hard steel from soft.
reason-cracked =
    .headline = { no-straightening } A crack runs on as you press, and the piece breaks.
    .caution = Cut the crack out, or use new steel.
reason-straightened-too-often =
    .headline = { no-straightening } This place was straightened twice already, and the steel there has little stretch left.
    .caution = More than two cycles made bridge steel brittle, and some of it broke (R. R. Avent and others). Cut it out and use new steel.
reason-no-stretch-left =
    .headline = { no-straightening } The bend is so sharp that it has used up the stretch of the steel.
    .caution = The outside of the bend has stretched by { $strain } already. Bending it back takes as much again. Cut it out and use new steel.
reason-cracks-not-looked-for =
    .headline = { not-yet } You have not said that you looked for cracks.
    .caution = Clean the bend to bare metal. Look at the outside and the inside of it with a glass, or with dye. Look at its sheared or flame-cut edges as well.
reason-past-not-known =
    .headline = { not-yet } You have not said how often this place was straightened.
    .caution = A place that was straightened before is hard and can break.
reason-bends-too-far-for-this =
    .headline = It is too springy for these formulas, because it would have to bend by more than a tenth of its span. Put the supports closer, and press it place by place.
    .caution = No figure is given where a piece bends by more than a tenth of its span.
reason-chain-overloaded =
    .headline = Do not pull with this chain. The ram can pull with { $used } of its { $chain } rating.
    .caution = Once the piece meets the table, the whole force of the ram is on the chain. Use rigging that is rated for the whole ram, or a smaller ram.
reason-ram-not-known =
    .headline = { not-yet } You have not said how hard the ram can push, so nobody can say what the table must bear.
    .caution = Read the capacity off the ram's plate.
reason-chain-not-known =
    .headline = { not-yet } The rating of the chain is not known.
    .caution = Do not pull with a chain that has no readable mark. Give the lowest rating of chain, hook and shackle.
reason-ram-too-weak =
    .headline = { how-far } { how-hard } This ram can be too weak for it.
    .caution = The piece can be stronger than the ram. Do not heat the piece to help it, and put no pipe on the pump's lever. Put the supports farther apart, or take a larger ram.
reason-room-not-said =
    .headline = { how-far } { how-hard } Look whether there is room for that.
    .caution = You have not said how much room is under the middle. On a bare table the piece is pressed flat and springs back.
reason-meets-the-table =
    .headline = It can meet the table too soon. { how-far } There is room for { $room }, and as much as { $left_at_most } of the bow can stay. Raise the supports.
    .caution = When the piece lies on the table, the ram presses the table. The force goes up, and the piece does not move.
reason-bends-once-more =
    .headline = { how-far } { how-hard } This place was straightened once already.
    .caution = It was straightened once already. Look for cracks after every push, and do not press it a third time.
reason-sharp-bend =
    .headline = { how-far } { how-hard } A sharp bend does not straighten as an even bow does.
    .caution = The steel at a sharp bend has become hard, and it bends least there. Set the supports close to it, press in small steps, and look for cracks after each.
reason-own-table =
    .headline = { how-far } { how-hard }
    .caution = Nobody has tested a table or press of your own. Its welds, bolts and legs must bear the whole force of the ram.
reason-wide-plate =
    .headline = { how-far } { how-hard } Pushing on one spot of so wide a plate makes a dent.
    .caution = Lay a stiff bar across the whole width under the ram, and the same under both edges.
reason-press-past-straight =
    .headline = { how-far } { how-hard }
reason-movement-leads =
    .caution = Measure movement, and do not go by the gauge. At 1.1 times the force of first yield almost nothing stays. At { $runs_at } times that force the middle keeps bending. Let the piece come up after each step, and lay the straightedge on.
reason-killed-by-a-fitting =
    .caution = In Oregon a welded fitting burst on a shop-built hydraulic press with a broken gauge. It killed the fabricator, who was 20 years old (NIOSH FACE 04OR015, 2004). Weld no hydraulic part, and do not press with a broken gauge.
reason-killed-by-a-loose-piece =
    .caution = In Michigan a press threw out a loose steel cylinder 4 in long that had been left under the ram. It killed a co-owner of the shop (NIOSH FACE 03MI029, 2003). Stack no loose packing. Press on one flat, square block that cannot tip.
reason-stand-aside =
    .caution = Let nobody stand in line with the ram, the chain or the ends of the piece. Pump from the side, behind a barrier, with face protection. No distance makes it safe.
reason-energy-at-least =
    .caution = The piece, and what else you gave, store { $stored_energy } and more while the piece bends. If something slips, it flies with that energy. If the piece lies on the table and you pump on, the ram stores more.
reason-yields-sooner-back =
    .caution = Steel that was bent once yields sooner on the way back (Bauschinger effect). Start with a quarter of the springback, and go on in small steps.
reason-shape-is-all =
    .caution = Pressing gives back the shape and nothing else. A straightened part does not lift or tie down.

## The working

step-yield-moment = Moment of first yield (My)
    .formula = Fy × I / (h / 2)
    .numbers = { OWN($yield_strength) } × { OWN($second) } / ({ OWN($height) } / 2)
    .result = { $yield_moment }
step-plastic-moment = Plastic moment (Mp)
    .formula = { $shape ->
        [flat] 1.5 × My
       *[other] 16 / (3 π) × My
    }
    .numbers = { $factor } × { OWN($yield_moment) }
    .result = { $plastic_moment }
step-first-force = Force at first yield
    .formula = 4 My / L
    .numbers = 4 × { OWN($yield_moment) } / { OWN($span) }
    .result = { $first_force }
step-hinge-force = Force at which the middle keeps bending
    .formula = 4 Mp / L
    .numbers = 4 × { OWN($plastic_moment) } / { OWN($span) }
    .result = { $hinge_force }
step-at-most = Force that it can need at most
    .formula = 1.5 × that, and 1.155 times as much again where it is 5 times as wide as thick, or wider
    .numbers = { $factor } × { OWN($hinge_force) }
    .result = { $force_at_most }
step-first-travel = Movement before any bend stays
    .formula = Fy L² / (6 E h)
    .numbers = { OWN($yield_strength) } × ({ OWN($span) })² / (6 E × { OWN($height) })
    .result = { $first_travel }
step-springs-back = Springs back from where the bow is taken out
    .formula = M / My × first movement, M from what is to stay
    .numbers = { $share } × { OWN($first_travel) }
    .result = { $over_bend_from }
step-each-support = Force on each support
    .formula = whole force of the ram / 2
    .numbers = { OWN($must_bear) } / 2
    .result = { $each_support }
step-table-moment = Bending moment in the table
    .formula = whole force of the ram × L / 4
    .numbers = { OWN($must_bear) } × { OWN($span) } / 4
    .result = { $table_moment }
step-in-piece = Energy in the piece
    .formula = F² / (2 × 48 E I / L³); F is the most it can need, or all that the ram has
    .numbers = stiffness { OWN($stiffness) }
    .result = { $in_piece }
step-strain = Stretch of the sharp bend
    .formula = h / (2 R + h)
    .numbers = { OWN($height) } / (2 × { OWN($inside_radius) } + { OWN($height) })
    .result = { $strain }

## Why a result is absent

absent-no-figure = no figure for this
absent-ram-not-known = give the ram's capacity
absent-room-not-said = give the room under straight
absent-chain-not-given = no chain given
absent-oil-not-given = give the ram's bore and its oil
absent-give-not-given = not given
absent-even-bow = no sharp bend
absent-no-bore = no bore given

## Refusals

refused-more-than-its-wire = is more than any chain of that wire is rated for, { $most } at most. Measure the wire, and read the tag again.
refused-on-edge = is more than the width: a flat pressed on its edge rolls over. Lay it on its flat side.
refused-supports-too-near = is so short that the supports crush the piece before it bends. Give { $least } or more.
refused-bent-too-far = is more than a tenth of the length between the supports. Put them closer to the bend, and measure the bow over that length. Give { $most } or less.

## The drawing

figure = The piece to scale along its length. Heights are drawn { $times } times too large. { $past ->
        [absent] No figure is given for it.
       *[other] It lies in the upper curve, and is pressed to the lower one, { $past } past straight or more. When you let go it comes up to the straight line.
    }
figure-past = { $past } past
figure-bow = bow { $bow }
figure-ram = ram
figure-chain = chain
