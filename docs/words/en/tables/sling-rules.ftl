# Words of the table sling-rules. A key that is not here is looked for in common.ftl.

question = How are rope slings made and used?
description = Splices, clear lengths, clips and sockets of rope slings.

## Read before you use it

note-clip-table-same-section-serves = The clip table of the same section serves other eyes.
note-fewer-than-federal-table-1 = One fewer than the federal table from 1 in up: take the larger count.
note-bending-factors-stricter-rule = The bending factors are the stricter rule.

## Words of the columns

word-item-braided_sling = Braided sling
word-item-grommet = Grommet
word-item-wire_rope_splice = Wire rope splice
word-item-manila_splice = Manila splice
word-item-synthetic_splice = Synthetic splice
word-item-fibre_tail = Fiber tail
word-item-clip = Clip
word-item-wedge_socket = Wedge socket
word-item-spliced_sling = Spliced sling
word-item-sharp_bend = Sharp bend
word-item-angle = Angle
word-rule-clear-length = Clear length
word-rule-length = Length
word-rule-tucks = Tucks
word-rule-side = Side
word-rule-not-on-slings = Not on slings
word-rule-retighten = Retighten
word-rule-scaffold = Scaffold
word-rule-count-formula = Count formula
word-rule-line = Line
word-rule-lower = Lower
word-rule-rescue-rule = Rescue rule
word-rule-least = Least
word-rule-vertical = Vertical
