# Words of the table typical-weights. A key that is not here is looked for in common.ftl.

question = About how much does an engine or a machine tool weigh?
description = High end of what shops and sellers say engines, gearboxes, mills and lathes weigh. Estimates, for choosing a scale and a crane.

## Read before you use it

note-high-end-of-estimates = The high end of estimates from shop and sellers' pages that name no source. They tell you which scale and which crane to bring.
note-a-quarter-more = Before it has been weighed, count at least a quarter more than the figure.

## Cautions; table.toml says of which kind each is

caution-an-estimate-is-no-load = Lift nothing by these figures. Weigh it, or read its plate or its manual.

## Columns

column-thing = What it is
    .help = Kind of engine, gearbox or machine.

## Quantities

quantity-high_weight = High estimate

## Words of the columns

word-thing-car_engine_four_cylinder = Car engine, four cylinders
word-thing-car_engine_v6 = Car engine, V6
word-thing-car_engine_v8 = Car engine, V8
word-thing-car_engine_cast_iron_v8 = Car engine, V8 of cast iron
word-thing-car_engine_any = Car engine, any
word-thing-car_engine_accessories = Accessories of a car engine, or more
word-thing-gearbox_manual = Gearbox of a car, manual
word-thing-gearbox_automatic = Gearbox of a car, automatic
word-thing-knee_mill_usual = Vertical knee mill, usual
word-thing-knee_mill_any = Vertical knee mill, any
word-thing-knee_mill_larger_series = Vertical knee mill, larger series
word-thing-lathe_7_by_14 = Lathe, 7 by 14 in
word-thing-lathe_9_in_bench = Lathe, 9 in swing, for a bench
word-thing-lathe_9_in_stand = Lathe, 9 in swing, with its stand
word-thing-lathe_medium = Lathe, medium
