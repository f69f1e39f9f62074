# Words of the table shackle-rules. A key that is not here is looked for in common.ftl.

question = How is a shackle used right?
description = Rules for pins, side pulls, marks and heat of shackles.

## Read before you use it

note-percentages-were-not-legible-ask = The percentages were not legible: ask the maker for the figure of the band.
note-reader-never-no-figure-brings = For this reader: never, and no figure brings it back.

## Words of the columns

word-item-side_load = Side load
word-item-choker = Choker
word-item-screw_pin = Screw pin
word-item-round_pin = Round pin
word-item-weld = Weld
word-item-heat = Heat
word-item-logging = Logging
word-item-thread = Thread
word-rule-load-to-mark = Load to mark
word-rule-bands = Bands
word-rule-over-90 = Over 90
word-rule-pin-in-eye = Pin in eye
word-rule-fully-home = Fully home
word-rule-outside-standard = Outside standard
word-rule-no-bolt = No bolt
word-rule-ask-maker = Ask maker
word-rule-one-size-up = One size up
word-rule-mouth = Mouth
word-rule-one-shows = One shows
