# Drawings of the pages on heat. A message is the caption of its drawing; its parts are the labels.

bead-anatomy = One bead, to scale: melted to { $melted } from its middle, a hard rim to { $hard }, a soft band to { $soft } at most. A crack starts at the notch of the toe, in the hard rim, where shrinkage pulls.
    .notch = notch: a crack
    .starts = starts here
    .shrinkage = shrinkage
    .pulls = pulls
    .melted = melted
    .hard = hard rim, hydrogen in it
    .softened = soft band

steel-while-hot = Structural steel while it is hot, as a share of cold: at { $at } it yields at { $yields } and is { $stiff } as stiff. The share is for design against fire; hardened steel loses faster.
    .yield = yield
    .stiffness = stiffness
