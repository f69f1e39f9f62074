# Worksheet pull-trial.

title = How do I pull on a part without getting hurt?
summary = The highest force that you may use and what sets it, the stages of the pull, the energy in the line, and what a pass proves (pull test).
story = The yard pulls a marked mooring hook against the slip's bench, inside its rating, before the season.

## What is asked

input-target = Pull you want
input-source = What pulls
option-source-ram = A ram
option-source-known-weight = A known weight
option-source-hoist = A hoist
input-ram_acts = The ram works by
    .help = When a ram pulls, the oil acts on the side of the rod, where the area is smaller.
option-ram_acts-push = pushing its rod out
option-ram_acts-pull = pulling its rod in
input-ram_bore = Bore of the ram
input-ram_rod = Diameter of the rod
input-ram_capacity = Capacity of the ram
    .help = From its plate, for the way it works.
input-max_pressure = Highest pressure of ram, pump, hose
    .help = The lowest of their plates.
input-known_weight = The known weight
    .help = Use its high figure. It pulls with its whole weight, and you cannot stop short of it.
input-hoist_capacity = Capacity of the hoist
input-gauge_capacity = Full scale of the load gauge
    .help = A pressure gauge: its full scale times the ram's area.
input-gauge_accuracy = Error of the gauge, of full scale
    .help = From the worksheet “Does my gauge tell the truth?”, or its class if it was checked.
input-anchor_limit = Limit of anchor and bench
input-items = Parts in the line
    .help = Give every part in the line of the pull, with the one on trial.
    .row = Part
input-items-length = Its length
    .help = Only for the energy that it stores.
input-chain_length = Length of the chain in the line
input-oil_volume = Oil in ram and hose
    .help = Only for the energy that it stores.
input-frame_give = The frame gives way by
    .help = Measured at the pull, from the anchor to what pulls; only for the energy.
input-hold = Hold at the top
    .help = Common practice, no source.
input-pulls_survived = Pulls like this that it has held, with this one

## What is found

result-ceiling = Highest force that you may use
result-ceiling_rating = The same force as a rating
result-governing = Set by
result-stop_reading = Highest reading on the gauge
result-pressure = Pressure at the pull you want
result-steps = The pull, stage by stage
result-stored_energy = Energy in the line, order of magnitude
result-stretch = Stretch of the parts whose length is known
result-what_breaks_first = Lowest rated part
result-blocked = Parts that may not be used
result-failure_bound = Chance of failing such a pull that is still possible (95% confidence)
result-rule_of_three = The same by the rule of three
result-proves = What a pass proves
result-does_not_prove = What it does not
result-proof_rules = Printed proof loads, for the maker or a test house

## The headline and the cautions

never-pass = Never pull harder than { $ceiling }. The lowest limit decides: { $governing }, { $ceiling_rating }.
only-its-maker = Only its maker or a test house may pull a part above its rating (proof test).
reason-too-hard-a-pull-besides =
    .caution = Even by what is known, a pull of { $pull } is too hard.
reason-near-the-limit =
    .caution = The pull that you want is close to the limit. If the gauge reads low, you would go over it without noticing.
reason-part-barred =
    .headline = Do not pull: { $why }.
do-not-pull-yet = Do not pull yet.
reason-anchor-not-known =
    .headline = { do-not-pull-yet } Nothing is known of the anchor or bench. It is part of the line, and it can fail first.
    .caution = Find out what anchor and bench may carry.
reason-ram-plate-not-known =
    .headline = { do-not-pull-yet } The capacity on the ram's plate is not given.
    .caution = Read the capacity off the ram's plate.
reason-ram-bore-not-known =
    .headline = { do-not-pull-yet } Without the ram's bore you do not know what pressure the pull needs.
    .caution = Measure the bore, or read it off the plate.
reason-highest-pressure-not-known =
    .headline = { do-not-pull-yet } The highest pressure of ram, pump and hose is not given.
    .caution = Read the highest pressure on ram, pump and hose. The lowest one is the limit.
reason-ram-side-not-said =
    .headline = { do-not-pull-yet } You have not said whether the ram pushes or pulls. A ram that pulls works on a smaller area.
    .caution = Say whether the ram pushes or pulls, and how thick its rod is.
reason-weight-over-ceiling =
    .headline = Do not pull. The weight pulls with its whole { $pull }, which is over the lowest limit. { never-pass } { only-its-maker }
reason-weight-inside-every-limit =
    .headline = { never-pass } The weight pulls with its whole { $pull }, which is less.
reason-over-ceiling =
    .headline = Do not pull. Your { $target } is over the lowest limit. { never-pass } { only-its-maker }
reason-inside-gauge-error =
    .headline = Do not pull. Your { $target } is under the highest force, but the gauge may read { $error } low. The true pull could be over it. { never-pass } { only-its-maker }
reason-inside-every-limit =
    .headline = { never-pass } Stop when the gauge reads { $stop_reading }. Your { $target } is below that.
reason-not-once-to-see =
    .caution = Do not pull, not even once or with a small force.
reason-altered-parts-to-their-maker =
    .caution = A part that was welded, heated, bent or lost its mark goes to its maker or to scrap. A pull in a shop cannot bring it back.
reason-nobody-in-line =
    .caution = Nobody stands in line with the pull, behind the hook, or over the chain. Keep everybody behind a barrier that would stop a flying hook. No distance makes it safe.
reason-read-from-afar =
    .caution = Read the gauge and the gap from a distance, with a camera, a long lens or a mirror. Wear eye and face protection.
reason-slack-before-touching =
    .caution = Release the pull until the line is slack before you touch, measure or look closely.
reason-oil-under-pressure =
    .caution = A jet of oil under pressure goes through a glove. Never feel along a hose. Check the ratings of hoses and couplings before you pump.
reason-hoist-stores-the-pull =
    .caution = A hoist keeps pulling when you release the hand chain. Its own brake and hooks are in the line too.
reason-weight-barely-lifted =
    .caution = Lift the known weight an inch or two and no more, over timber, with nothing and nobody under it.
reason-stored-energy =
    .caution = The line stores about { $stored_energy }, as much as a 25 kg (55 lb) sack falling { $fall }. This is a rough figure, and it gives no safe distance.
reason-stored-energy-at-least =
    .caution = The line stores { $stored_energy } and more: at least as much as a 25 kg (55 lb) sack falling { $fall }. Parts without a length, oil with air in it, the frame and the hoist store more. This is a rough figure, and it gives no safe distance.
at-least = at least { $energy }
reason-rating-from-memory =
    .caution = One rating here was not read in its own source. Read the mark on the part and go by it.
reason-unsound-steel-breaks =
    .caution = Only a sound hook opens before it breaks. Cold, cracked, welded or heated steel can break at once.

## What limits the pull

limit-ram-capacity = the ram's capacity
limit-highest-pressure = the highest pressure
limit-hoist = the hoist
limit-gauge = the gauge less its error
limit-anchor = the anchor or bench
as-given = as given
open-anchor-not-known = the anchor is not known
open-ram-plate-not-known = the ram's capacity is not known
open-ram-bore-not-known = the ram's bore is not known
open-highest-pressure-not-known = the highest pressure is not known
open-ram-side-not-said = you have not said whether the ram pushes or pulls
proves-nothing = Nothing: there is no such pull.
part-with-flat-legs = the legs of the part “{ $part }” lie under 30° from the horizontal
of-legs = { $printed }, { $legs } legs at { PLACES($angle, places: 0) }

## The pull, stage by stage

stage-slack = Slack: mark the parts, measure every throat and gap, set up the barrier and send everybody away.
stage = { $number }. { stage-pull }: hold half a minute, read force and gap from a distance. { stage-stop }
stage-top = { $number }. { stage-pull }: hold { $hold }, read force, gap and time at the start, the middle and the end. { stage-stop }
stage-hung = Lower the weight until all { $force } hang an inch or two clear of the floor: hold { $hold }, read gap and time at the start, the middle and the end. Set it down again if the gap keeps growing, or anything creaks, turns or slips.
stage-pull = { $force }{ $pressure ->
        [absent] { "" }
       *[other] , { $pressure }
    }
stage-stop = Stop if the force falls by itself, the gap keeps growing, or anything creaks, turns or slips.
stage-back = Go back to the first stage. The gap there must be what it was on the way up. If it is larger, the part has permanent set.
stage-off = Release the pull until the line is slack before anybody goes near. Measure every throat and gap again and look for cracks.

## Printed proof loads

proof-rule = { $item }, { $range }: { $factor } × rating ({ $source })
proof-rule-and-more = { $item }, { $range }: { $factor } × rating + { $addition } ({ $source })
proof-item-alloy_chain_sling = alloy chain sling
proof-item-loose_gear = loose gear
proof-item-hook_without_maker_data = hook for which the maker gives no data
proof-item-shackle = shackle
proof-item-welded_end_of_wire_rope_sling = welded end of wire rope sling
proof-item-wire_rope_sling_navy = wire rope sling of the US Navy
proof-item-web_sling_after_repair = web sling after repair
proof-item-hand_chain_block = hand chain block
proof-range-any = any rating
proof-range-to = rating up to { $load }
proof-range-over = rating over { $load }

## The working

step-limit = Limit: { $name }
    .formula = as rated and as used
    .numbers = { $basis }
    .result = { $force }
step-ceiling = Highest force
    .formula = the lowest of all limits
    .numbers = { $governing }
    .result = { $ceiling }
step-highest-reading = Highest reading
    .formula = highest force − error of the gauge
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
absent-not-to-be-found-out = not known while a part may not be used
absent-no-ram-bore = no ram bore given
absent-chain-not-given = give sizes and lengths of chain, rope and slings
absent-not-all-known = no pull while a limit is not known

## Refusals

refused-over-the-weight = is more than the { $weight } that the weight can pull. Give no more than that.
refused-gauge-under-the-weight = is under the known weight. Give a gauge that can take it, or leave it empty.
refused-rod-missing = is missing for a ram that pulls. Measure the rod, such as 1 in.
refused-rod-fills-the-bore = is not thinner than the bore. Measure both again.
refused-bore-or-capacity = or the ram's capacity is needed. Give the bore, such as 1.68 in.
refused-pressure-missing = is needed with the bore alone. Read it off ram, pump and hose.
refused-gauge-missing = is needed: without a gauge you do not know the pull. Give its full scale.

## The drawing

figure = Every limit on the pull, drawn to scale, against the pull you want. The lowest is { $lowest }.
figure-no-pull = Every limit on the pull, drawn to scale, against the pull you want. No pull: { $barred }.
figure-limit = { $name }: { $force }
figure-your-pull = your pull { OWN($target, digits: 3) }
