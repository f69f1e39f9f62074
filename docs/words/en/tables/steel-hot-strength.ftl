# Words of the table steel-hot-strength. A key that is not here is looked for in common.ftl.

question = How strong is structural steel while hot?
description = Share of yield strength, proportional limit and stiffness left in structural carbon steel at temperature.

## Read before you use it

note-structural-carbon-steel-quenched = For structural carbon steel. Quenched and tempered parts lose strength sooner and do not get it back.
note-between-rows-go-straight = Between two rows go on a straight line.

## Cautions; table.toml says of which kind each is

caution-not-for-rated-hardware = Not for chain, hooks, shackles or bolts.

## Columns

column-temperature_degC = Temperature
    .help = Steel temperature.

## Quantities

quantity-yield_factor = Yield strength
quantity-proportional_limit_factor = Proportional limit
quantity-modulus_factor = Stiffness

## Charts

chart-share =
    .up = Share of the cold value
    .across = Temperature of the steel, °C
    .title = Share of the cold value, against temperature of the steel, °C
