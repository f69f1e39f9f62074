# Words of the table chain-heat-en. A key that is not here is looked for in common.ftl.

question = What does heat leave of a chain sling? (EN 818-6)
description = Share of the working load limit left in a temperature band, European chain slings of grade 4, 5 and 8.

## Read before you use it

note-outside-bands-no-use = Outside the bands: no use. Grade 5 and grade 8 end at 400 °C, grade 4 at 475 °C.

## Cautions; table.toml says of which kind each is

caution-finished-after-cooling = Above the last band the chain is removed from service, also after cooling.

## Charts

chart-en =
    .up = Left of the rating while hot, %
    .across = Temperature of the chain, °C
    .title = Left of the rating while hot, %, against temperature of the chain, °C
    .note = EN 818-6. { chart-steps }

chart-both =
    .up = Left of the rating while hot, %
    .across = Temperature of the chain, °C
    .title = Left of the rating while hot, %, against temperature of the chain, °C
    .note = ASME B30.9 beside it; grade 80 and grade 8 are one chain. { chart-steps }
