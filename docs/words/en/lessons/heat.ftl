# Drawings of the pages on heat. A message is the caption of its drawing; its parts are the labels.

bead-anatomy = One bead cut through, to scale. The steel was melted to { $melted } from the middle of the bead. The hard zone reaches to { $hard }, and the softened zone to { $soft } at most. A crack starts at the edge of the bead, where a notch, the hard zone and the pull of shrinkage meet.
    .notch = notch: a crack
    .starts = starts here
    .shrinkage = shrinkage
    .pulls = pulls
    .melted = melted
    .hard = hard zone
    .softened = softened zone

steel-while-hot = Structural steel while it is hot, as a share of what it has when cold. At { $at } it yields at { $yields } of its cold strength and has { $stiff } of its stiffness. These shares are for design against fire. Hardened steel loses strength faster.
    .yield = yield
    .stiffness = stiffness
