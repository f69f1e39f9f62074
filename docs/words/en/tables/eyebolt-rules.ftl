# Words of the table eyebolt-rules. A key that is not here is looked for in common.ftl.

question = How is an eyebolt fitted and pulled?
description = Rules for shoulder, thread, nut, spacer and angle of eyebolts.

## Read before you use it

note-figures-reduction-were-not-copy = The figures of the reduction were not in the copy. Ask the maker.
note-applies-in-washington-shipyards = Applies in Washington shipyards.

## Cautions; table.toml says of which kind each is

caution-threaded-through-two = A sling threaded through two eyebolts pulls them together, hard.

## Words of the columns

word-rule-in-line-only = In line only
word-rule-angle-needs-shoulder = Angle needs shoulder
word-rule-plane-of-eye = Plane of eye
word-rule-shipyard-angle = Shipyard angle
word-rule-blind-hole = Blind hole
word-rule-thin-through-hole = Thin through hole
word-rule-plain-through-hole = Plain through hole
word-rule-forged-only = Forged only
word-rule-no-made-shoulder = No made shoulder
word-rule-locked-nut = Locked nut
word-rule-thread-full = Thread full
word-rule-locked = Locked
word-item-hoist_ring = Swivel hoist ring
word-rule-engagement-by-metal = Thread engagement by metal
word-rule-shoulder-not-seated = Shoulder not seated
word-rule-temperature = Temperature
word-rule-angle-steps = Angle, American sheets
word-rule-no-reeving = No reeving
word-rule-flattest-leg = Flattest leg
word-rule-own-mark = Its own mark
word-rule-torque = Torque
word-rule-no-spacer = No spacer
word-rule-engagement = Thread engagement
word-rule-base-metal = Metal below it
