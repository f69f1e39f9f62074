# The deck and what stands on it: asked on every sheet that reckons with friction.

input-deck = The deck under the load
    .help = Look under the load first. Sand, grit, ice, oil and wet take the grip away.
option-deck-swept-dry = Swept clean and dry
option-deck-swept-wet = Swept clean, but wet
option-deck-unswept = Not swept
option-deck-icy = Frost, ice or snow
option-deck-oily = Oil or grease
input-pair = What stands on what
    .help = Left empty: the worst, as on an oily deck.
option-pair-sawn-wood-on-plywood = Sawn wood or wooden pallet on plywood or a wooden deck
option-pair-sawn-wood-on-grooved-aluminium = Sawn wood or wooden pallet on grooved aluminum
option-pair-sawn-wood-on-steel = Sawn wood or wooden pallet on steel
option-pair-planed-wood-on-plywood = Planed wood on plywood
option-pair-planed-wood-on-grooved-aluminium = Planed wood on grooved aluminum
option-pair-planed-wood-on-steel = Planed wood on steel
option-pair-plastic-pallet-on-plywood = Plastic pallet on plywood
option-pair-plastic-pallet-on-metal = Plastic pallet on metal
option-pair-steel-crate-on-plywood = Steel crate on plywood
option-pair-steel-crate-on-grooved-aluminium = Steel crate on grooved aluminum
option-pair-steel-on-steel = Steel on steel
option-pair-rubber-on-deck = Rubber tires or tracks on the deck
option-pair-rough-concrete-on-wood = Rough concrete on wood
option-pair-friction-mat = A friction mat between, marked by its maker

reason-friction-bound =
    .closing = The friction is taken low, as for a bad deck.
    .caution = The friction is not a measured one. For this deck, or for a pair that is not known, the book takes a low bound from memory. Sweep the deck and dry it, or block the load.
