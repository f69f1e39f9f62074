# Words of the table web-slings. A key that is not here is looked for in common.ftl.

question = What may a web sling of this color lift?
description = Flat woven web slings by the European color code: straight, choked, in a basket, on two and more legs; and the factor of each hitch.

## Read before you use it

note-label-governs-colour-code = The label governs. Colors, one sling, and two straight legs up to 45° were read in a reprint of the standard; the other legs are recalled, and held by statics.
note-colour-says-nothing-once = The color says nothing once the label is gone, and other countries use no color code: there a yellow sling can be anything.
note-orange-10-t-every = Orange is 10 t and every larger sling.
note-angles-vertical-0-45 = Angles are from the vertical: 0 to 45° from the vertical is 90 to 45° from the horizontal, 45 to 60° is 45 to 30°.
note-legs-sling-legs-up = Legs: a sling of two legs up to 45° from the vertical counts 1.4 times one, three and four legs 2.1 times. A basket is two parts of one sling.
note-last-row-factor-hitch = The last row is the factor of the hitch: it multiplies the straight limit on any label.
note-straight-limit-times-factor-hitch = Straight limit times the factor of the hitch, not rounded.
note-larger-slings-orange-well-read = Larger slings are orange as well: read the label.
note-held-statics-legs-times-cosine = Held by statics: legs times the cosine, cut to the tenth; choked four fifths.

## Cautions; table.toml says of which kind each is

caution-no-label-no-lift = Without a label it does not lift. Do not go by its color or by its stripes.
caution-too-flat = Over 60° from the vertical, which is under 30° from the horizontal: do not lift.
caution-damaged-sling-is-out = A cut, burnt, melted, knotted or mended sling has no rating. Cut it up.

## Columns

column-colour = Color
    .help = Color of the webbing by the European code; the last is the factor that goes for every color.
column-hitch = Hitch
    .help = How the sling is fastened: straight, choked, or as a basket under the load.

## Quantities

quantity-mode_factor = Mode factor

## Words of the columns

word-colour-violet = Violet
word-colour-green = Green
word-colour-yellow = Yellow
word-colour-grey = Gray
word-colour-red = Red
word-colour-brown = Brown
word-colour-blue = Blue
word-colour-orange = Orange
word-colour-factor = Factor
word-hitch-choke = Choke
