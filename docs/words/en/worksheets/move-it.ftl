# Worksheet move-it.

title = What pull moves my load along the floor or a ramp?
summary = The pull that starts a load on skids or rollers, keeps it moving and holds it back on a slope; tackle with its losses, winch pull by layer, turns on a post (capstan). A study aid.
story = The yard slides a crated engine up its slip on planks, with a tackle of three parts and a small winch.

## What is asked

input-load = Load
    .help = Use the high figure of its weight, with the crate.
input-slope = Slope
    .help = Give 0 on the level. A rise of 1 in 10 is 6°.
input-way = How the load moves
option-way-slides = It slides on skids or planks
option-way-rollers = It rolls on rollers or wheels
input-pair = What slides on what, dry
    .help = If they are oily, wet, icy or not in the list, leave it empty.
option-pair-wood-on-wood = wood on wood
option-pair-steel-on-wood = steel on wood
option-pair-steel-on-steel = steel on steel, no oil
option-pair-rubber-on-concrete = rubber on dry concrete
input-level_pull = Pull that starts it on the level
    .help = Measured with a scale in the line, on the same floor.
input-parts = Parts of rope at the moving block
    .help = Give 1 if you use no tackle.
input-sheaves = Sheaves that the rope runs over
    .help = Count all of them, also those that only turn the rope. Give 0 if you use no tackle.
input-rating = Rating of the weakest part
    .help = The lowest of ropes, slings, shackles and blocks, at the load and at the anchor, with marks that you can read. With a tackle the anchor bears more than the load.
input-hauled_by = Hauled by
option-hauled_by-winch = a winch
option-hauled_by-other = something else: a hoist, a truck, hands
input-winch_rating = Winch: pull on the first layer
    .help = From its plate.
input-drum = Winch: diameter of the bare drum
input-rope = Winch: diameter of its rope
input-layer = Winch: layer that the rope lies on
    .help = The first layer is on the bare drum. If you leave it empty, a full drum is assumed.
input-turns = Held by turns on a post
    .help = Full turns of the rope that holds the load back.
input-post_friction = Friction of rope on the post
    .help = To hold, use a low figure: 0.1 for smooth or wet steel (common practice, no source).

## What is found

result-start_pull = Pull to start it, at the load
result-keep_pull = Pull to keep it moving
result-hold_back = Pull to hold it back
result-slides_at = It can slide by itself from a slope of
result-hauling_pull = Pull on the rope's free part
result-anchor_pull = Pull on the anchor of the block
result-rating_share = Part used of the weakest rating
result-winch_has = Pull of the winch on this layer
result-winch_share = Part used of that pull
result-tail_pull = Pull on the tail behind the post

## The headline and the cautions

it-takes = It takes a pull of { $start_pull } to start it. { $held }
held-by-itself = By these figures it stays where it is by itself.
held-by-a-line = It takes { $hold_back } to hold it back.

reason-winch-too-weak =
    .headline = Do not pull. The rope needs { $hauling_pull }, and on this layer the winch pulls only { $winch_has }.
    .caution = A winch pulls most on its bare drum, and less with each layer. Run more rope off, keeping five turns on the drum, or add a part to the tackle.
reason-rigging-overloaded =
    .headline = Do not pull. The pull is { $used } of the rating of the weakest part.
    .caution = Use rigging that is rated for the pull that starts it, and for what holds it back.
reason-winch-not-known =
    .headline = { it-takes } You have not said what the winch can pull.
    .caution = Read the pull on the plate of the winch. The plate gives the pull on the bare drum.
reason-rating-not-known =
    .headline = { it-takes } You have not said what the rigging is rated for.
    .caution = Give the lowest rating of the slings, shackles and blocks, at the load and at the anchor. Do not pull with a part that has no readable mark.
reason-rolls-away =
    .headline = { it-takes } On rollers only the line holds it.
    .caution = A load on rollers runs away on a slope. Before you move it, put a second line on it and chocks below it.
reason-keep-a-line-on-it =
    .headline = { it-takes } Keep a line on it all the same.
    .caution = A jolt can set free a load that only friction holds. Friction is less once it moves, and a wet plank has little. Keep a line on it on any slope.
reason-pair-not-known =
    .headline = { it-takes } The two surfaces are not known, so the worst is used both ways.
    .caution = For unknown surfaces the highest friction is used for the pull, and no friction for holding it back.
reason-the-pulls =
    .headline = { it-takes }
reason-jams-pull-more =
    .caution = If a skid digs in or meets a crack or a stone, it takes far more than this. If it does not start, stop and look.
reason-nobody-below =
    .caution = Let nobody stand below the load, in line with a rope under pull, or inside a bend of the rope.
reason-no-grease-on-a-slope =
    .caution = Do not grease skids on a slope. On the level a greased load drifts sideways (NAVEDTRA 14251).
reason-hands-off-rollers =
    .caution = Place rollers with a stick, and not with a hand or a foot. Keep four to six of them under the load (NAVEDTRA 14251).

## The working

step-start-rolling = Start
    .formula = weight × sin slope + level pull × cos slope
    .numbers = { OWN($weight) }, { OWN($level_pull) } at { $slope }
    .result = { $start_pull }
step-start = Start
    .formula = weight × (sin slope + μ cos slope), μ standing, high
    .numbers = { OWN($weight) } at { $slope }, μ { $friction }
    .result = { $start_pull }
step-keep = Keep moving
    .formula = weight × (sin slope + μ cos slope), μ moving, high
    .numbers = { OWN($weight) } at { $slope }, μ { $friction }
    .result = { $keep_pull }
step-hold = Hold back
    .formula = weight × (sin slope − μ cos slope), μ moving, low; no less than 0
    .numbers = { OWN($weight) } at { $slope }, μ { $friction }
    .result = { $hold_back }
step-tackle = Free part of the rope
    .formula = pull × (1 + 0.1 × sheaves) / parts
    .numbers = { OWN($pull) } × (1 + 0.1 × { $sheaves }) / { $parts }
    .result = { $hauling_pull }
step-layer = Winch on this layer
    .formula = first pull × (drum + rope) / (drum + (2 × layer − 1) × rope)
    .numbers = { OWN($winch_rating) }, drum { OWN($bare) }, rope { OWN($thick) }, layer { $layer }
    .result = { $winch_has }
step-tail = Tail behind the post
    .formula = pull × e^(−2 π μ turns)
    .numbers = { OWN($hold_back) }, { $turns } turns, μ { $post_friction }
    .result = { $tail_pull }

## Why a result is absent

absent-no-winch = no winch given
absent-no-turns = no post given

## Refusals

refused-more-than-the-load = is more than the load weighs. On rollers the level takes far less: look for what jams.
refused-too-few = is too few for a tackle of { $parts } parts. Count each wheel that the rope runs over.

## The drawing

figure = The ramp to scale at { $slope }°. The arrow shows the pull that starts the load.
figure-slope = { $slope }°
figure-holds = holds { $pull }
