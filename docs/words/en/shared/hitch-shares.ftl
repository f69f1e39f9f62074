# What a choke, a basket and a bend leave of a rating: the words for each share.

share-choke = choke
share-choke-of-fibre-rope = choke on natural fiber rope
share-choke-angle = angle of choke { PLACES($angle, places: 0) }
share-bend = bend { $ratio } times its own diameter
share-wide-bend = wide enough for this sling
