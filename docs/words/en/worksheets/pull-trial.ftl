# Worksheet pull-trial.

title = How do I pull on a part without getting hurt?
summary = The force never to pass, what sets it, the stages of the pull, the energy in the line, and what a pass proves.
story = The yard pulls a marked bollard hook against the slip's bench, inside its rating, before the season.

## What is asked

input-target = Pull you want
input-source = What pulls
option-source-ram = A ram
option-source-known-weight = A known weight
option-source-hoist = A hoist
input-ram_bore = Bore of the ram
input-ram_capacity = Or: capacity of the ram
input-max_pressure = Highest pressure of ram, pump, hose
    .help = The lowest of their plates.
input-known_weight = The known weight
    .help = Its high figure.
input-hoist_capacity = Capacity of the hoist
input-gauge_capacity = Full scale of the load gauge
    .help = A pressure gauge: its full scale times the ram's area.
input-gauge_accuracy = Error of the gauge, of full scale
    .help = From gauge-check, or its class if it was checked.
input-anchor_limit = What anchor and bench may take
input-items = Parts in the string
    .help = Every part in the line of the pull, the one on trial too.
    .row = Part
input-chain_length = Length of the chain in the string
input-hold = Hold at the top
    .help = Common practice, no source.
input-pulls_survived = Such pulls survived so far, this one counted

## What is found

result-ceiling = Never pass
result-governing = Set by
result-stop_reading = Highest reading on the gauge
result-pressure = Pressure at the pull you want
result-steps = The pull, stage by stage
result-stored_energy = Energy in the chain, order of magnitude
result-stretch = Stretch of the chain
result-what_breaks_first = Lowest rated part
result-blocked = Parts that may not be used
result-failure_bound = Chance of failing it that is still possible (95%, exact)
result-rule_of_three = The same by the rule of three
result-proves = What a pass proves
result-does_not_prove = What it does not
result-proof_rules = Printed proof loads, for the maker or a test house

## The headline and the cautions

never-pass = Never pass { $ceiling }: { $governing } sets it.
only-its-maker = Above a rating only its maker or a test house pulls.
reason-too-hard-a-pull-besides =
    .caution = The pull is over a limit as well.
reason-near-the-limit =
    .caution = The pull you want is close to its limit: a gauge that reads low would let it pass.
reason-part-barred =
    .headline = Do not pull. { $why }.
reason-over-ceiling =
    .headline = Do not pull. Your { $target } is over the ceiling, which { $governing } sets. { never-pass } { only-its-maker }
reason-inside-gauge-error =
    .headline = Do not pull. Your { $target } is under the ceiling, but the gauge may read { $error } low: the true pull could pass it. { never-pass } { only-its-maker }
reason-inside-every-limit =
    .headline = { never-pass } Stop the gauge at { $stop_reading }; your { $target } stays inside.
reason-not-once-to-see =
    .caution = Do not pull. Not at part force, not once to see.
reason-altered-parts-to-their-maker =
    .caution = A part that was welded, heated, bent or lost its mark goes to its maker or to scrap. A pull in a shop cannot bring it back.
reason-nobody-in-line =
    .caution = Nobody stands in line with the pull, behind the hook, or over the chain. Keep everybody behind a barrier that would stop a flying hook. No distance makes it safe.
reason-read-from-afar =
    .caution = Read the gauge and the gap from afar: a camera, a long lens, a mirror. Wear eye and face protection.
reason-slack-before-touching =
    .caution = Let the pull off to slack before you touch, measure or look close.
reason-oil-under-pressure =
    .caution = Oil under pressure goes through a glove. Never feel along a hose. Check hose and coupling ratings before the pump.
reason-hoist-stores-the-pull =
    .caution = A hoist stores the pull when you let go of the hand chain, and its own brake and hooks are in the line too.
reason-weight-barely-lifted =
    .caution = Lift the known weight a hand's breadth and no more, over timber, with nothing and nobody under it.
reason-stored-energy =
    .caution = The stretched chain holds about { $stored_energy }, as much as a 25 kg (55 lb) sack falling { $fall }. Rope, frame and oil hold more. Take it as an order of magnitude, not as a safe distance.
reason-anchor-not-known =
    .caution = Nothing is known of the anchor or bench. It is part of the string: find what it may take, or it gives first.
reason-rating-from-memory =
    .caution = A rating here was looked up in a row not seen in its source's text. Read the mark on the part; it governs.
reason-unsound-steel-breaks =
    .caution = Hooks open before they break only if they are sound. Cold, cracked, welded or heat-marked steel breaks at once.

## What limits the pull

limit-ram-capacity = the ram's capacity
limit-highest-pressure = the highest pressure
limit-hoist = the hoist
limit-known-weight = the known weight
limit-gauge = the gauge less its error
limit-anchor = the anchor or bench
as-given = as given
part-with-flat-legs = { $part } has legs under 30° from the horizontal
of-legs = { $printed }, { $legs } legs at { PLACES($angle, places: 0) }

## The pull, stage by stage

stage-slack = Slack: mark the parts, measure every throat and gap, set the barrier, send everybody away.
stage = { $number }. { stage-pull }: hold half a minute, read force and gap from afar. { stage-stop }
stage-top = { $number }. { stage-pull }: hold { $hold }, read force, gap and time at the start, the middle and the end. { stage-stop }
stage-pull = { $force }{ $pressure ->
        [absent] { "" }
       *[other] , { $pressure }
    }
stage-stop = Stop if the force falls by itself, the gap runs, anything creaks, turns or slips.
stage-back = Let off to the first stage: the gap there must be what it was on the way up. More is permanent set.
stage-off = Let off to slack before anybody steps near. Measure every throat and gap again, look for cracks.

## Printed proof loads

proof-rule = { $item }, { $range }: { $factor } × rating ({ $source }, { $locator })
proof-item-alloy_chain_sling = alloy chain sling
proof-item-loose_gear = loose gear
proof-item-hook_without_maker_data = hook without maker data
proof-item-shackle = shackle
proof-item-welded_end_of_wire_rope_sling = welded end of wire rope sling
proof-item-wire_rope_sling_navy = wire rope sling navy
proof-item-web_sling_after_repair = web sling after repair
proof-item-hand_chain_block = hand chain block
proof-range-any = any
proof-range-to = to { $load }
proof-range-over = over { $load }

## The working

step-limit = Limit: { $name }
    .formula = as rated and as used
    .numbers = { $basis }
    .result = { $force }
step-ceiling = Ceiling
    .formula = the lowest of all limits
    .numbers = { $governing }
    .result = { $ceiling }
step-highest-reading = Highest reading
    .formula = ceiling − error of the gauge
    .numbers = { OWN($ceiling) } − { OWN($error) }
    .result = { $stop_reading }
step-what-it-would-prove = What it would prove
    .formula = 1 − 0.05^(1/n), the exact bound at 95%
    .numbers = n = { $pulls_survived ->
            [one] 1 pull
           *[other] { $pulls_survived } pulls
        } survived, none failed
    .result = the chance of failing such a pull can still be { $failure_bound }

## Why a result is absent

absent-part-may-not-be-used = no pull: a part may not be used
absent-nothing-sets-it = a part may not be used
absent-no-pull = no pull
absent-not-to-be-found-out = not to be found out
absent-no-ram-bore = no ram bore given
absent-chain-not-given = give the chain's size and length

## Refusals

refused-bore-or-capacity = or the ram's capacity is needed. Give the bore, such as 1.68 in.
refused-pressure-missing = is needed with the bore alone. Read it off ram, pump and hose.
refused-gauge-missing = is needed: without a gauge nobody knows the pull. Give its full scale.

## The drawing

figure = Every limit on the pull, drawn to scale, against the pull you want. The lowest is { $lowest }.
figure-no-pull = Every limit on the pull, drawn to scale, against the pull you want. No pull: { $barred }.
figure-limit = { $name }: { $force }
figure-your-pull = your pull { OWN($target, digits: 3) }
