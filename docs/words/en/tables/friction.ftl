# Words of the table friction. A key that is not here is looked for in common.ftl.

question = How much does friction hold under a load?
description = Friction of what stands on what, dry and wet, as codes for packing cargo print it.

## Read before you use it

note-swept-clean = The figures are those of surfaces that were swept clean, while the load stands still. A figure of 0.3 means that friction holds three tenths of the weight.
note-no-better-than-worst = Where no figure is printed, the worksheets take that of an oily deck. Frost, ice and snow are taken like oil, which is stricter than the code.
note-row-cut-off = The row was cut off where the code was read.
note-seven-tenths = While the load moves; seven tenths of the figure of a load that stands.
note-slightly-soiled = Assumed by an expert for rubber tracks that are slightly soiled, on a fairly clean deck. Dirty tracks hold as good as nothing.
note-unmarked-mat = Half the weight on the mat; holds for a mat without a mark in the United States. Canada counts only a mat that its maker marked.
note-clean-surfaces = On clean surfaces.
note-direct-lashings-only = Where lashings run from the load to the deck, the load moves a little before they hold.
note-older-edition = The edition before that of 2010.

## Cautions; table.toml says of which kind each is

caution-sweep-first = Sweep the deck and look under the load before you use a figure. Sand, grit, oil, ice and water take the grip away.
caution-friction-alone = Friction never holds a load on the road alone. Tie it down, and block it where you can.

## Columns

column-pair = Surfaces
    .help = What stands on what: the underside of the load first, then the deck.
column-state = State
    .help = Of the two surfaces; moving: while the load slides.

## Quantities

quantity-friction = Friction
quantity-friction_at_most = Friction, at most
quantity-moving_share = Left while the load moves

## Words of the columns

word-pair-sawn-wood-on-plywood = Sawn wood or wooden pallet on plywood
word-pair-sawn-wood-on-grooved-aluminium = Sawn wood or wooden pallet on grooved aluminum
word-pair-sawn-wood-on-steel = Sawn wood or wooden pallet on steel sheet
word-pair-sawn-wood-on-film = Sawn wood or wooden pallet on shrink film
word-pair-planed-wood-on-plywood = Planed wood on plywood
word-pair-planed-wood-on-grooved-aluminium = Planed wood on grooved aluminum
word-pair-planed-wood-on-steel = Planed wood on steel sheet
word-pair-plastic-pallet-on-plywood = Plastic pallet on plywood
word-pair-plastic-pallet-on-grooved-aluminium = Plastic pallet on grooved aluminum
word-pair-plastic-pallet-on-steel = Plastic pallet on steel sheet
word-pair-steel-crate-on-plywood = Steel crate on plywood
word-pair-steel-crate-on-grooved-aluminium = Steel crate on grooved aluminum
word-pair-steel-crate-on-steel = Steel crate on steel sheet
word-pair-rough-concrete-on-wood = Rough concrete on sawn wood
word-pair-smooth-concrete-on-wood = Smooth concrete on sawn wood
word-pair-cardboard-on-cardboard = Cardboard on cardboard
word-pair-cardboard-on-wood = Cardboard on a wooden pallet
word-pair-big-bag-on-wood = Big bag on a wooden pallet
word-pair-rough-metal-on-rough-metal = Unpainted rough metal on itself
word-pair-painted-rough-metal-on-itself = Painted rough metal on itself
word-pair-painted-smooth-metal-on-itself = Painted smooth metal on itself
word-pair-smooth-metal-on-smooth-metal = Smooth metal on smooth metal
word-pair-steel-on-wooden-bolster = Steel on a wooden bolster
word-pair-rubber-track-on-deck = Rubber tires or tracks on the deck
word-pair-friction-mat = Friction mat between
word-pair-any = Anything
word-state-dry = Swept, dry
word-state-wet = Swept, wet
word-state-moving = Moving
word-state-unswept = Not swept
word-state-oily = Oily or greasy
