# Words of the table steel-compositions. A key that is not here is looked for in common.ftl.

question = What is in this steel?
description = Composition ranges of bar steels and of chain steels named in patents, in percent by weight.

## Read before you use it

note-chain-hook-makers-not = Chain and hook makers do not print their steel. These ranges show the family.
note-1340-8630-memory-numbering = 1340 and 8630 are from memory; the numbering of SAE steels and the widths of its ranges hold them. Steels that nothing holds (1541, 20Mn2, 23MnNiMoCr5-4) are left out.
note-later-editions-print-0-15 = Later editions print 0.15 to 0.35.
note-page-misprints-cell-held-family = The page misprints this cell. Held by the family: all 86xx steels share one molybdenum range.
note-held-family-86xx-steels-width = Held by the family of 86xx steels and by the width of the range.
note-held-name-series-13-1 = Held by the name: series 13 is 1.75 percent manganese, 40 is the carbon; by the width of the range.
note-when-required = When required.

## Cautions; table.toml says of which kind each is

caution-weld-leaves-a-hard-edge = A weld on any of these leaves a hard, crack-prone edge.

## Columns

column-steel = Steel
    .help = Name of the steel.
column-element = Element
    .help = Chemical element.

## Quantities

quantity-minimum = Minimum
quantity-range = Range
quantity-maximum = Maximum

## Words of the columns

word-steel-chain_steel_patent_a = Chain steel, patent A
word-steel-chain_steel_patent_b = Chain steel, patent B
word-steel-mining_chain_steel_patent = Mining chain, patent
word-steel-small_chain_steel_patent = Small chain, patent
word-element-carbon = Carbon
word-element-manganese = Manganese
word-element-silicon = Silicon
word-element-chromium = Chromium
word-element-molybdenum = Molybdenum
word-element-nickel = Nickel
word-element-copper = Copper
word-element-tungsten = Tungsten
word-element-aluminium = Aluminum
word-element-phosphorus = Phosphorus
word-element-sulphur = Sulfur
word-element-titanium = Titanium
