# Drawings of the pages on pulling and judging. A message is the caption of its drawing; its parts are the labels.

passes-curve = Out of 100 parts like these, how many can still be bad after so many pulls were passed and none failed. { $bounds }. To rule out more than 1 in { $one_in } takes { $needed } pulls. The curve rules out what would happen less than once in twenty tries.
    .bound = { $passes } { $passes ->
        [one] pull
       *[other] pulls
    }: up to { $bound }
    .axis = pulls passed, none failed

safe-pull-plan = Seen from above: anchor, part and ram are in one straight line. Keep the dashed lane round that line empty, from end to end and beyond both ends. Stand beside the middle, behind a barrier, with the pump and the gauge on a long hose. Watch the part through a camera or a mirror.
    .part = part
    .ram = ram
    .anchor = anchor
    .lane = nobody in here, nor past its two ends
    .barrier = barrier
    .you = you
    .pump = pump and gauge
    .camera = camera or mirror on the part

gauge-dial = A dial whose maker promises { $error } percent of full scale. The needle may be wrong by the same width anywhere: { $marks }. Read such a dial only along the heavy arc, from a quarter to three quarters.
    .mark = at { $mark } percent of the scale it is { $error } percent of the reading
    .either-way = ±{ $error }%
    .class = ±{ $error }% of full scale

hook-opens = The dashed line is a hook as made, with a throat of { $new }. The full line is the same hook after an overload: the tip has moved out, and the throat is { $now }. The steel yielded first at the ringed place, inside the back of the bowl, level with the load.
    .load = load
    .hardest = highest tension
    .pressed = compression

cut-it-up = Cut a hook through the back of its bowl, and through its eye or pin hole as well. Cut a link through both sides. Cut a chain into pieces that are too short to use.
    .cut = cut
    .both = cut both sides

measure-link =
    .thickness = thickness

measure-shackle = A bow shackle from the front. Measure the body at its crown, where the load sits, and in the legs. Measure the pin where it bears, and the jaw between the lugs. Compare each with a new one of the same make and size. The collar of the pin must touch the body.
    .bow = bow
    .pin = pin
    .mouth = jaw
    .collar = collar

measure-rope = A six-strand rope. Above, its side: one lay is the length along which a strand goes once round. Below, its section: lay the caliper over the crowns of the strands. Over the valleys it reads only { $reads } percent of the true diameter, and a sound rope looks worn.
    .lay = one lay: six strands along
    .wires = broken wires: count in one lay
    .crowns = crowns: right
    .valleys = valleys: wrong

measure-web-sling = A flat web sling laid out. Look at the tag, the stitching of both eyes, the inside of the eyes, both edges, and both faces over the whole length. Turn the sling over and do it again.
    .tag = tag
    .edges = both edges: cuts
    .stitching = stitching
    .eye = eye: wear, burn
    .faces = faces: holes, melt
