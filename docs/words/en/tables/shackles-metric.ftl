# Words of the table shackles-metric. A key that is not here is looked for in common.ftl.

question = How big is a shackle of this class?
description = Body, pin, openings and weight of bow and dee shackles by the class number that is stamped on them (EN 13889 pattern).

## Read before you use it

note-class-is-the-number = The class is the number stamped on the bow: 3-1/4 or 3.25 is one class.
note-tonnes-or-short-tons = European sheets give the class in tonnes, the American table gives the same number in short tons, a tenth less. Unless the mark says which, count short tons: 907 kg each.
note-measure-to-identify = Measure to see that a shackle is what its mark says, and to know what goes through it. Its limit is the mark, never the measure.
note-two-sheets = A dee shackle is also called a chain shackle. Two sheets that differ by a few millimeters are printed side by side.
note-class-cut-to-one-place = Printed as 3.2 and 4.7 t there.

## Cautions; table.toml says of which kind each is

caution-not-by-measuring = Do not rate an unmarked shackle by measuring it.

## Columns

column-class_t = Class
    .help = The number on the bow.

## Quantities

quantity-body_diameter = Body diameter
quantity-pin_diameter = Pin diameter
quantity-inside_width_at_pin = Width at the pin
quantity-inside_length_dee = Inside length, dee
quantity-inside_length_bow = Inside length, bow
quantity-bow_inside_width = Width of the bow
quantity-eye_outside_diameter = Eye, outside diameter
quantity-weight_screw_pin = Weight with screw pin
quantity-weight_safety_bolt = Weight with safety bolt
