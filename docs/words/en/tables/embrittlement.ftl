# Words of the table embrittlement. A key that is not here is looked for in common.ftl.

question = What makes strong steel brittle?
description = Temperature bands and hardness limits at which steel becomes brittle.

## Read before you use it

note-blue-heat-steel-stronger = At blue heat steel is stronger, and gives less before it breaks.
note-chain-grade-8-10 = Chain of grade 8, 10 and 12 is kept out of pickling and hot-dip galvanizing plants.
note-liquid-zinc-cracks-stressed = Liquid zinc cracks stressed and hardened steel.
note-susceptibility-rises-significantly = Susceptibility rises significantly.

## Cautions; table.toml says of which kind each is

caution-brittle-gives-no-warning = Brittle steel gives no warning and passes a steady pull.

## Columns

column-phenomenon = Phenomenon
    .help = Kind of embrittlement.
column-case = Case
    .help = Which statement of it.

## Quantities

quantity-temperature_from = Temperature from
quantity-temperature_to = Temperature to
quantity-tensile_strength_above = Tensile strength above
quantity-hardness_above = Hardness above
quantity-hardness_at_most = Hardness at most
quantity-hardness_from = Hardness from

## Words of the columns

word-phenomenon-blue_brittleness = Blue brittleness
word-phenomenon-tempered_martensite_embrittlement = Tempered martensite embrittlement
word-phenomenon-temper_embrittlement = Temper embrittlement
word-phenomenon-hydrogen_embrittlement = Hydrogen embrittlement
word-case-usual = Usual range
word-case-other_note = Another text
word-case-glossary = A glossary
word-case-fasteners = Fasteners
word-case-high_susceptibility = High susceptibility
word-case-structural_bolts = Structural bolts
word-case-failed_fasteners = Failed fasteners
word-case-process_investigation = Process investigation
word-case-written_agreement = Written agreement
