# Drawings of the pages on pulling and judging. A message is the caption of its drawing; its parts are the labels.

passes-curve = How large the chance of failure at the next like pull may still be, at nineteen to one, after so many passed and none failed. { $bounds }. To get under 1 in { $one_in } takes { $needed } pulls.
    .bound = { $passes } { $passes ->
        [one] pull
       *[other] pulls
    }: up to { $bound } in 100
    .axis = pulls passed, none failed

safe-pull-plan = Seen from above: anchor, part and ram stand in one straight line. The dashed lane round that line stays empty from end to end and beyond both ends. You stand beside the middle, behind a barrier, with the pump and the gauge on a long hose, and watch the part through a camera or a mirror.
    .part = part
    .ram = ram
    .anchor = anchor
    .lane = nobody in here, nor past its two ends
    .barrier = barrier
    .you = you
    .pump = pump and gauge
    .camera = camera or mirror on the part

gauge-dial = A dial whose maker promises { $error } percent of full scale. The needle may be wrong by the same width anywhere: { $marks }. The heavy arc, from a quarter to three quarters, is where such a dial is fit to read.
    .mark = at { $mark } percent of the scale it is { $error } percent of the reading
    .either-way = ±{ $error }%
    .class = ±{ $error }% of full scale

hook-opens = Dashed, a hook as made, its throat { $new }. Full line, the same hook after an overload: the tip has moved out and the throat is { $now }. The steel gave at the ringed place first, inside the back of the bowl, level with the load.
    .load = load
    .hardest = pulled hardest
    .pressed = pressed

cut-it-up = Cut a hook through the back of its bowl, and its eye or pin hole as well. Cut a link through both sides, and a chain often enough that no piece left is worth picking up.
    .cut = cut
    .both = cut both sides

measure-link =
    .thickness = thickness

measure-shackle = A bow shackle from the front. Measure the bow at its crown, where the load sits, and in the legs; the pin where it bears; the mouth between the ears. Compare each with a new one of the same make and size. The collar of the pin must touch the body.
    .bow = bow
    .pin = pin
    .mouth = mouth
    .collar = collar

measure-rope = A six-strand rope. Above, its side: one lay is the way along which a strand goes once round, six strands along. Below, its section: lay the caliper over the crowns of the strands. Over the valleys it reads only { $reads } percent of the true diameter, and a sound rope looks worn.
    .lay = one lay: six strands along
    .wires = broken wires: count in one lay
    .crowns = crowns: right
    .valleys = valleys: wrong

measure-web-sling = A flat web sling laid out. Look at the tag, the stitching of both eyes, the inside of the eyes, both edges and both faces over the whole length. Turn it over and do it again.
    .tag = tag
    .edges = both edges: cuts
    .stitching = stitching
    .eye = eye: wear, burn
    .faces = faces: holes, melt
