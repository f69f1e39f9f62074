# What the heat rules of chain say. `$at` and `$below` are temperatures; the rest are cells of the tables.

asme-silent = ASME B30.9 prints nothing for grade { $grade } here
asme-too-cold = below { $below }: ask the chain's maker (printed for shackles)
asme-no-loss = no reduction below { $below }
asme-row = { $row } row: { $hot } less while hot, { $later } less permanently
asme-too-hot = over { $at }: remove from service permanently
en-silent = EN 818-6 prints nothing for grade { $grade }
en-band = { $low } to { $high } band: { $left } left while hot
en-outside = not allowed outside { $low } to { $high }

rule-asme = ASME B30.9
rule-en = EN 818-6
heat-line-asme = full line { rule-asme }
heat-line-en = dashed line { rule-en }
figure-heat-rules = Share of its rating that a sound chain keeps while it is hot: { $lines }. Where a line drops to nothing, the rule allows no use.
figure-heat-upright = The upright marks { $at }.
