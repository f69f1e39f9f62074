# Drawings of the pages on steel. A message is the caption of its drawing; its parts are the labels.

carbon-trapped = Open circles are iron atoms, filled dots are carbon. Red hot, the crystal has room for the carbon. Cooled slowly, it has none, and the carbon gathers in plates between soft iron. Quenched, the carbon had no time to leave: it is trapped, and stretches the crystal. Tempered, part of it has gathered in specks, and the crystal is less stretched. In steel with { $carbon } % carbon the quenched crystal is { $longer } longer than wide; the drawing shows { $times } times that.
    .red = red hot
    .slow = cooled slowly
    .quenched = quenched
    .tempered = tempered

hardness-by-carbon = How hard steel becomes when it is fully quenched, by its carbon. Plain steel with { $low_carbon } % carbon reaches about { $low } HV, a hook-like steel with { $high_carbon } % about { $high } HV. Above about { $risk } a weld is at risk of cracking by hydrogen.
    .axis = carbon, %
    .hardness = hardness, HV
    .plain = plain steel
    .hook = hook-like steel
    .risk = risk of cracks

notch-bars = The work that one blow needs to break a notched bar of the same steel, 1040, in four states. Quenched and not tempered: { $quenched }. Softened by annealing: { $annealed }. Normalized: { $normalized }. Quenched and tempered: { $tempered }.
    .quenched = quenched
    .annealed = annealed
    .normalized = normalized
    .tempered = tempered

cold-curves = The work that one blow needs to break a notched bar, over the temperature. Full line: modern structural steel, printed at { $modern } for { $modern_at }. Dashed line: ship plate of wartime, { $old } at { $old_at }. The dot low in the middle is hull plate of 1911: { $hull } at { $hull_at }. The shaded band is a cold shop, { $low } to { $high }. Dots are printed; the lines are a model through one dot each.
    .axis = temperature, { $unit }
    .energy = notch energy, { $unit }
    .modern = modern plate
    .old = old plate
    .shop = cold shop

fatigue-by-skin = The stress that steel bears over and over, against its strength, for three kinds of skin. With a machined skin it rises from { $machined_low } to { $machined_high } as the steel gets stronger. With a skin as it left the forge it stays at about { $forged_low }, from steel of { $soft } to steel of { $strong }. A textbook rule for small test bars without a notch.
    .axis = tensile strength, { $unit }
    .limit = stress each way, { $unit }
    .machined = machined skin
    .rolled = hot-rolled skin
    .forged = as forged

zinc-bath = Tensile strength of a 4140 test piece before (full line) and after (dashed line) { $minutes } minutes in a zinc bath at { $bath }, by the heat at which it was tempered. Tempered at { $cool } it loses { $cool_loss }, at { $middle } it loses { $middle_loss }. Tempered hotter than the bath it loses nothing. Nobody outside its maker knows at what heat your part was tempered.
    .axis = tempered at, { $unit }
    .strength = strength, { $unit }
    .bath = bath
    .before = before
    .after = after the bath

bend-and-back = How far the outer skin of a bar is stretched, by the tightness of the bend. A bend of three thicknesses stretches it { $once }. Bent and straightened, it has used { $both }. A bend of one and a half thicknesses stretches it { $tight } at once.
    .axis = inside radius of the bend, in thicknesses
    .stretch = stretch of the skin, %
    .once = bent once
    .back = bent and straightened

push-and-stay = Push over movement of a flat on two supports, both over those of first yield. The full line is the push, the dashed lines are the way back when you let go. Let go at 1.25 times the push of first yield, and { $little } of the movement at first yield stays. Let go where the middle begins to run, and { $most } stays.
    .moves = movement, over that at first yield
    .push = push, over that at first yield
    .first = first yield
    .runs = runs
    .back = let go
