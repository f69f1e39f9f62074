# Words of the table arc-efficiency. A key that is not here is looked for in common.ftl.

question = How much of the arc goes into the steel?
description = Arc efficiency by welding process: the factors of the codes, and measured values.

## Read before you use it

note-not-mix-them-factors = Do not mix them: the factors of the codes are relative to submerged arc, the measured ones are shares of all the heat of the arc.
note-consumable-electrode-processes-together = Consumable electrode processes together.

## Quantities

quantity-relative_to_saw = By the codes, submerged arc = 1
quantity-measured_efficiency = Measured
quantity-measured_efficiency_low = Measured efficiency low
quantity-measured_efficiency_high = Measured efficiency high
quantity-measured_efficiency_mean = Measured, mean of many

## Words of the columns

word-process-saw = Submerged arc (SAW)
word-process-smaw = Stick (SMAW)
word-process-gmaw = MIG or MAG (GMAW)
word-process-fcaw = Flux-cored wire (FCAW)
word-process-gtaw = TIG (GTAW)
word-process-plasma = Plasma
