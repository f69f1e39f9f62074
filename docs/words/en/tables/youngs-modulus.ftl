# Words of the table youngs-modulus. A key that is not here is looked for in common.ftl.

question = How stiff is this material?
description = Young's modulus of common materials.

## Columns

column-material = Material
    .help = Material.

## Quantities

quantity-youngs_modulus = Young’s modulus

## Words of the columns

word-material-steel = Steel
word-material-cast_iron = Cast iron
word-material-aluminium = Aluminum
word-material-brass = Brass
word-material-glass = Glass
word-material-hardwood = Hardwood
word-material-concrete = Concrete
word-material-nylon = Nylon
word-material-lead = Lead
word-material-granite = Granite
