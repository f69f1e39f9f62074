# Drawings of the pages on parts. A message is the caption of its drawing; its parts are the labels.

eyebolt-lever = Two 3/8 in eyebolts, to scale, pulled across. The pull acts { $height } above the load, on a shank { $shank } thick. Left, without a shoulder: all of it bends the foot of the shank, with { $times } times the stress of the same pull in line. Right, with a shoulder seated flat: its edge, { $radius } from the middle, props the eye, so that the shank is pulled { $props } times as hard but hardly bent.
    .prop = props
    .bends = bends here
    .height = lever

eyebolt-angle = A 3/8 in eyebolt under { $load }, its rating in line, pulled at more and more of an angle. In line the thread carries { $in_line }. At 45° the shank carries { $without } without a shoulder, and { $seated } with the shoulder seated. Mild steel yields at about { $yields }. Stress above that line only shows how fast the danger grows: the part has bent by then.
    .axis = angle of the pull from the shank, degrees
    .stress = stress, { $unit }
    .without = no shoulder
    .with = shoulder seated
    .yield = mild steel yields

pin-in-ears = Left, the shackle's own pin: it fills the holes, and smooth steel lies in both planes where the lugs try to cut it. Right, a thinner bolt: it sits loose in the holes, thread lies in one of the two planes, and the load in the middle bends it.
    .pin = own pin
    .bolt = bolt

hook-sections = Two hooks cut through at the back of the bowl, to scale. Both have the same area and the same opening. The shaded curve is the stress across the section, counted in times the mean; below the line it is compression. The inside of the bent rod carries { $rod } times the mean, the inside of the forged shape { $deep } times. From the same steel the forged shape carries { $more } more before it yields.
    .times = { $times } ×
    .rod = bent rod
    .deep = forged shape
    .inside = inside

rope-round-a-pin = How much of its strength a wire rope keeps where it bends round a pin, by the size of the pin: { $points }. The line is a formula of marine lifting, the dots are printed by two suppliers. In use a sheave of 20 rope diameters gives about { $lives } times as many bends as one of 14.
    .axis = pin or sheave over rope (D/d)
    .left = strength left, %
    .point = { $left } at D/d = { $ratio }
    .pin = pin as thick as the rope
    .thimble = four times
    .sheave = sheave

hoist-at-an-angle = A hoist that pulls at an angle from plumb. The chain carries little more than the weight: { $small_chain } more at 10°. The sideways force on frame and hook is { $small } of the weight at 10°, and { $large } at 30°.
    .axis = angle from plumb, degrees
    .share = share of the weight, %
    .chain = pull in the chain
    .sideways = sideways force
