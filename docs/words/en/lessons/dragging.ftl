# Drawings that a reader can drag. A message is the caption of its drawing; its parts are the labels and what is said.

leg-angle = An engine of { $load } on two legs over one spread. The bar at the right is the tension in one leg, to the same scale as half of the load beside it.
    .handle = Drag the hook up and down, or move this
    .bar = tension
    .half = line: half the load
    .said = At { $angle } each leg pulls { $pull }, { $factor } times its half, and presses { $side } sideways.
    .stop = At { $angle } each leg would pull { $pull }, { $factor } times its half. That is too flat: do not lift.
