# Words of the table rope-terminations. A key that is not here is looked for in common.ftl.

question = What does the end fitting take from a rope?
description = Factor by which the breaking load of a rope is divided for its end fitting.

## Read before you use it

note-divide-breaking-load-factor = Divide the breaking load by the factor. 1.0 takes nothing.

## Cautions; table.toml says of which kind each is

caution-tag-counts-its-ends = A rating on a sling tag already counts its own ends.

## Quantities

quantity-termination_factor = Termination factor

## Words of the columns

word-termination-hand_splice = Hand splice
word-termination-resin_socket = Resin socket
word-termination-swage_or_flemish_eye = Swage or flemish eye
word-termination-cable_laid_hand_splice = Cable laid hand splice
word-termination-grommet = Grommet
word-termination-fibre_sling = Fiber sling
