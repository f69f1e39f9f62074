# A bar or a leg that is pressed along its length.

input-section = Section
option-section-square-tube = Square tube
option-section-pipe = Pipe or round tube
option-section-book = From a section book
input-width = Width over all
    .help = Side of the square, or outside diameter.
input-wall = Wall
    .help = With calipers, where it is thinnest.
input-area = Area
    .help = From the section book.
input-radius = Least radius of gyration
    .help = The r about the weakest axis.
input-modulus = Least section modulus
    .help = About the weakest axis.
input-yield_strength = Yield strength of the steel
    .help = Plain structural steel: 36,000 psi (ASTM A36), if you know that it is that.
refused-book-contradicts = does not fit the area and the radius: no rolled section has these three. Look at their units again, and take all three about the same axis.
refused-wall-too-thick = is more than half the tube. Measure it again.
absent-thin-wall = its wall is so thin that it buckles by itself
