# The deck and what stands on it: asked on every sheet that uses friction.

input-deck = The deck under the load
    .help = Look under the load first. Sand, grit, ice, oil and water reduce the friction.
option-deck-swept-dry = Swept clean and dry
option-deck-swept-wet = Swept clean, but wet
option-deck-unswept = Not swept
option-deck-icy = Frost, ice or snow
option-deck-oily = Oil or grease
input-pair = What stands on what
    .help = If you leave it empty, the worst is used, as on an oily deck.
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
    .closing = A low friction is used, as for a bad deck.
    .caution = This friction was not measured. For this deck, or for an unknown pair, the book uses a low figure from memory. Sweep and dry the deck, or block the load.
