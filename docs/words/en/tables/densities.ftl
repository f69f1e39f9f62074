# Words of the table densities. A key that is not here is looked for in common.ftl.

question = How heavy is this material?
description = Densities of metals, woods, stone, soil, liquids and building materials: low and high, each as its source prints it.

## Read before you use it

note-figure-means-source-gives = One figure means that the source gives no range.
note-lift-high-end-range = Lift by the high end of the range.
note-sources-differ-stand-side = Sources differ, and stand side by side: steel is printed as 490, 492 and 493 lb/ft³ and as 7,800 kg/m³. Take the highest.
note-green-wet-wood-wet = Green or wet wood, wet soil and filled vessels weigh far more.
note-weight-state-pays = The weight the state pays by.
note-moisture-and-gravity-0-42 = At about 10 percent moisture, specific gravity 0.42.
note-moisture-and-gravity-0-36 = At about 10 percent moisture, specific gravity 0.36.
note-moisture-and-gravity-0-55 = At about 10 percent moisture, specific gravity 0.55.
note-moisture-and-gravity-0-50 = At about 10 percent moisture, specific gravity 0.50.
note-moisture-and-gravity-0-43 = At about 10 percent moisture, specific gravity 0.43.
note-moisture-and-gravity-0-68 = At about 10 percent moisture, specific gravity 0.68.
note-far-below-solid-stone-loose = Far below solid stone: loose, piled stone.
note-average = Average.
note-printed-for-iron-or-steel = Printed for iron or steel.
note-used-input-worked-example = Used as an input of a worked example.
note-held-density-element-independent-library = Held by the density of the element in an independent library.
note-less-than-30-mm-deep = Less than 30 mm deep.
note-30-to-70-mm-deep = 30 to 70 mm deep.
note-70-to-100-mm-deep = 70 to 100 mm deep.
note-less-than-200-mm-deep = Less than 200 mm deep.
note-heavier-than-the-building-list = Heavier than the building list.

## Cautions; table.toml says of which kind each is

caution-look-for-what-is-inside = Look for what you cannot see: water, ice, mud, contents, weld metal.

## Columns

column-material = Material key
    .help = Name of the material as a key.
column-material_name = Material
    .help = Name of the material.

## Quantities

quantity-density_low = Density low
quantity-density = Density
quantity-density_high = Density high
