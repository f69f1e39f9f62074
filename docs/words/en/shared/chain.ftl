# What is said of chain.

chain-size = { $inches } ({ $metric } mm)

## The drawing of a link

label-inside-length = inside length
figure-link = One link seen flat, its neighbors dashed. Measure the wire where two links bear on each other, at the end of the link, in both directions, and take the smallest reading: { $wire }. The inside length runs from bearing to bearing{ $pitch ->
        [absent] ; it is drawn as three wire thicknesses.
       *[other] : { DIGITS($pitch, digits: 4) }.
    }
