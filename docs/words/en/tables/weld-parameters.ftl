# Words of the table weld-parameters. A key that is not here is looked for in common.ftl.

question = What current does this electrode run at?
description = Current ranges of covered electrodes.

## Read before you use it

note-volts-travel-speed-were = Volts and travel speed were in no source that was read, and are left out: use your own.

## Columns

column-electrode = Electrode
    .help = Electrode class.

## Quantities

quantity-current_low = Current low
quantity-current = Current
quantity-current_high = Current high

## Words of the columns

word-process-smaw = Smaw
