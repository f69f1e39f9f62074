# Words of the table lifting-point-rules. A key that is not here is looked for in common.ftl.

question = Where may lifting points go on a machine?
description = How military standards place and size lifting points on equipment.

## Words of the columns

word-item-sling_leg = Sling leg
word-item-load = Load
word-item-lifting_point = Lifting point
word-item-rating = Rating
word-rule-angle = Angle
word-rule-least-length = Least length
word-rule-clearance = Clearance
word-rule-number = Number
word-rule-design-load = Design load
word-rule-above-centre = Above center
word-rule-acceptance-only = Acceptance only
word-rule-straight-pull = Straight pull
