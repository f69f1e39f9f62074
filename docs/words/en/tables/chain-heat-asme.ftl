# Words of the table chain-heat-asme. A key that is not here is looked for in common.ftl.

question = What does heat take from alloy chain? (ASME B30.9)
description = Reduction of the working load limit of grade 80 and grade 100 chain while hot, and for good afterwards.

## Read before you use it

note-below-400-f-204 = Below 400 °F (204 °C) nothing is taken off. A chain that was hotter than 1,000 °F (538 °C) is out of use for good.
note-between-rows-take-hotter = Between two rows take the hotter one.
note-european-rule-differs-cross = The European rule differs, and the two cross: at 316 °C it leaves 75% of grade 8 where this one leaves 80%, at 371 °C 75% where this one leaves 70%, and above 400 °C it forbids use. Write down which rule you used.

## Cautions; table.toml says of which kind each is

caution-does-not-bring-heated-chain-back = This is for a chain in a hot place that its maker allows. It does not bring a torch-heated chain back.

## Columns

column-temperature_degF = Temperature
    .help = Temperature of the chain.
column-temperature_degC = Temperature
    .help = Temperature of the chain as the source prints it.

## Quantities

quantity-reduction_while_hot = Reduction while hot
quantity-reduction_afterwards = Reduction afterwards

## Charts

chart-both =
    .up = Left of the rating while hot, %
    .across = Temperature of the chain, °C
    .title = Left of the rating while hot, %, against temperature of the chain, °C
    .note = ASME B30.9 and EN 818-6 side by side; grade 80 and grade 8 are one chain. { chart-steps }
