# What the heat rules of chain say. `$at` and `$below` are temperatures; the rest are cells of the tables.

asme-silent = ASME B30.9 prints nothing for grade { $grade } here
asme-too-cold = below { $below }: ask the chain's maker (printed for shackles)
asme-no-loss = no reduction below { $below }
asme-row = { $row } row: { $hot } less while hot, { $later } less for good
asme-too-hot = over { $at }: out of service for good
en-silent = EN 818-6 prints nothing for grade { $grade }
en-band = { $low } to { $high } band: { $left } left while hot
en-outside = use is not allowed outside { $low } to { $high }
