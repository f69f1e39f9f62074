# Worksheet tie-down.

title = What must hold this load on the truck?
summary = Two verdicts side by side: the tie-downs (WLL) that the law asks for, and the forces when you brake and turn.
story = The yard's loader rides on a twenty-foot trailer, with one grade 70 chain and binder to each corner.

## What is asked

input-country = Where do you drive?
option-country-us = United States
option-country-canada = Canada
option-country-europe = Europe
input-commodity = What is it?
option-commodity-general = General freight: crates, pallets, castings, frames
option-commodity-machine = A machine on wheels or tracks
option-commodity-vehicle = A car, truck or van
option-commodity-coil = A coil of metal
option-commodity-pipe = Pipe, or anything round
option-commodity-plate-bar = Plate, bar or beams
input-load = Weight of the load
    .help = With fuel, bucket, mud and packing.
input-length = Length of the load
    .help = Along the truck.
input-width = Width of the load
input-height = Height of the load
    .help = From the deck.
input-centre_height = Height of its center of gravity
    .help = From the deck. If you leave it empty, the top of the load is used, which is the worst case.
input-edge_along = From the center of gravity to the nearer end of what it stands on
    .help = Seen along the truck: to the nearer axle of a machine, or half the pallet if the load is in its middle.
input-edge_across = From the center of gravity to the nearer side of what it stands on
    .help = Seen across the truck: half the track of a machine, or half the pallet.
input-rolling = Can it roll?
    .help = Chocks, wedges or a cradle that cannot come loose.
option-rolling-chocked = No: chocked, wedged or in a cradle
option-rolling-free = Yes: nothing keeps it from rolling
input-blocked = Is it blocked in front?
    .help = It stands close against a headboard, stakes or other freight.
option-blocked-no = No
option-blocked-yes = Yes, close against something
input-blocking_holds = What that blocking holds
    .help = As its maker states. If you leave it empty, the law counts it, but the forces do not.
input-edges = What do straps and chains lie on or rub on?
    .help = Look at each from end to end: corners of the load, its frame and tracks, the rub rail, the edge of the deck.
option-edges-rounded = Rounded edges, with nothing that cuts or chafes
option-edges-protected = Edge protectors under each
option-edges-none = Nothing: each runs free from hook to hook
option-edges-bare = Bare edges
input-anchor_limit = Limit of the weakest anchor used
    .help = From the plate or the book of truck or trailer. A ring that somebody welded on has none.
input-anchor_label = What the anchor’s plate says that limit is
    .help = If you leave it empty, the anchor counts for nothing.
option-anchor_label-wll = WLL, a working load limit
option-anchor_label-lc = LC, or a tie-down force in daN or kN
option-anchor_label-other = A lifting limit, a breaking strength, or it does not say
input-tie_downs = Tie-downs
    .help = A row for each kind. Chains that run alike to two or four corners stand in one row.
    .row = Tie-down

input-tie_downs-role = How does it run?
option-tie_downs-role-over-top = Over the load, down on both sides
option-tie_downs-role-direct = From the load straight to the deck
option-tie_downs-role-same-side = Round the load and back to the same side
input-tie_downs-kind = What is it?
option-tie_downs-kind-web = Strap with ratchet or winch
option-tie_downs-kind-chain = Chain with binder
option-tie_downs-kind-wire-rope = Wire rope with tensioner
option-tie_downs-kind-other = Something else
input-tie_downs-condition = Mark and condition
    .help = Look at all of it: label, webbing, links, hooks, ratchet or binder.
option-tie_downs-condition-marked-good = Mark or label readable, inspected and found good
option-tie_downs-condition-unmarked = No readable mark or label
option-tie_downs-condition-worn = Worn
option-tie_downs-condition-damaged = Cut, torn, knotted, cracked or burned
option-tie_downs-condition-welded = Welded on
option-tie_downs-condition-heated = Heated
option-tie_downs-condition-bent = Bent, twisted or stretched
option-tie_downs-condition-home-made = Home-made or mended
input-tie_downs-label = What its limits say they are
    .help = Look at strap or chain and at its binder. An LC is up to twice the WLL of the same part.
option-tie_downs-label-wll = WLL on every part
option-tie_downs-label-lc = LC on one part or more
option-tie_downs-label-other = MSL, breaking strength, a lifting limit, or it does not say
input-tie_downs-limit = Limit on its label or mark
    .help = In North America the WLL, in Europe the LC. Write the unit: lb, kg, daN or kN.
input-tie_downs-grade = Grade on the links
    .help = Such as 70.
input-tie_downs-size = Size of the chain
    .help = Such as 3/8.
input-tie_downs-tensioner_limit = Limit on its binder or tensioner
input-tie_downs-tension = Tension left in it
    .help = The STF on the label, or a measured tension. Never give the WLL or LC.
input-tie_downs-count = How many such straps
input-tie_downs-pulls = Which way does it pull the load?
    .help = From where it holds the load to where it holds the deck.
option-tie_downs-pulls-front-pair = To the front: one left and one right
option-tie_downs-pulls-rear-pair = To the rear: one left and one right
option-tie_downs-pulls-four-corners = To all four corners: four alike
option-tie_downs-pulls-both-sides = Straight to the sides: one left and one right
option-tie_downs-pulls-front-left = To the front left
option-tie_downs-pulls-front-right = To the front right
option-tie_downs-pulls-rear-left = To the rear left
option-tie_downs-pulls-rear-right = To the rear right
option-tie_downs-pulls-left = Straight to the left
option-tie_downs-pulls-right = Straight to the right
input-tie_downs-along = Along the truck
    .help = From its hook on the load to its hook on the deck, measured along the deck.
input-tie_downs-across = Across the truck
    .help = The same, measured across. Over the top: from the load's edge out to the anchor.
input-tie_downs-down = Down
    .help = From where it leaves the load, plumb down to the anchor.
input-tie_downs-lashing_length = How long it is
    .help = It only shows whether the tie-down reaches. Do not make one longer by hooking two hooks together.

## What is found

result-law_verdict = By the law's count
result-forces_verdict = By the forces
result-law_share = Part needed by the law of what it counts
result-law_counted = The law counts
result-law_asked = The law asks for
result-tie_downs_needed = Tie-downs the law asks for, at least
result-tie_downs_there = Tie-downs that count
result-forces_used = Part needed by the forces of what is held
result-worst = Smallest margin against
result-directions = Each movement
column-directions-motion = Movement
column-directions-asked = Needed
column-directions-held = Held
column-directions-used = Used
row-directions = { $motion }: { $asked } needed, { $held } held; { $state ->
        [fail] does not hold
       *[pass] holds
    }
result-countries = The law in each country
column-countries-country = Country
column-countries-needed = Asks for
column-countries-there = Counts
column-countries-asked = Limits it asks for
column-countries-counted = Limits it counts
column-countries-verdict = By its law
row-countries = { $country }: { $needed ->
        [absent] { absent-not-read-there }
       *[other] by its law { $verdict }; it asks for { $needed } and counts { $there }
    }
country-us = United States
country-canada = Canada
country-europe = Europe
result-shares = Part of each limit used
result-more_straps = More straps over the top against sliding
result-blocking_needed = Blocking in front would have to hold
result-friction = Friction

side-ok = within
side-caution = within, with care
side-stop = stop
side-unknown = cannot be told

motion-slide = { $direction ->
        [forward] sliding forward
        [rearward] sliding rearward
        [left] sliding to the left
       *[right] sliding to the right
    }
motion-tip = { $direction ->
        [forward] tipping forward
        [rearward] tipping rearward
        [left] tipping to the left
       *[right] tipping to the right
    }
motion-lift = lifting off the deck

tie-down-by-place = tie-down { $place } ({ $kind ->
        [web] strap
        [chain] chain
        [wire-rope] wire rope
       *[other] other
    })
of-tie-down = { $part }: { $amount }

## The headline: first how the two sides stand

reason-sides-agree =
    .opening = By the law’s count: { $law }. By the forces: { $forces }.
reason-law-alone-passes =
    .opening = The law’s count passes this load, but the forces are not held.
    .caution = The law’s count adds up limits. It takes no account of angle, friction or direction. A load that passes it can still slide or tip.
reason-forces-alone-pass =
    .opening = The forces are held, but the law’s count is not met.
    .caution = What holds by the forces can still be an offense on the road.

## Tie-downs

reason-tie-down-not-looked-at =
    .headline = You have not said yet that { $part } is marked and was found good, so it does not count.
    .caution = Read the label or mark of { $part } and inspect it from end to end. Until then it counts for nothing.
reason-tie-down-unmarked =
    .headline = Nobody knows what { $part } may hold: it has no readable mark.
    .caution = { $part } has no readable mark. Canada and Europe count it for nothing. US law would count an unmarked chain as grade 30; this book counts nothing, since nobody knows what it is.
reason-tie-down-not-passed =
    .headline = The last full inspection of { $part } did not pass, so it does not count.
    .caution = Do not use { $part } until an inspection passes it. That you find it good today is not a full inspection.
reason-tie-down-worn =
    .headline = { $part } is worn: inspect it first. Until it passes it does not count.
    .caution = Judge { $part } by the limits of its maker. The law has no size of wear that is allowed.
reason-tie-down-damaged =
    .headline = { $part } is damaged: it may not be used.
    .caution = Take { $part } off the truck. The law allows no cut, crack or knot in a tie-down.
reason-tie-down-welded =
    .headline = { $part } was welded, so it has no limit any more.
    .caution = Take { $part } off the truck. No test in your shop gives a welded part its limit back.
reason-tie-down-heated =
    .headline = { $part } was heated, so it has no limit any more.
    .caution = Take { $part } off the truck. No test in your shop gives a heated part its limit back.
reason-tie-down-bent =
    .headline = { $part } is bent or stretched, so it has no limit any more.
    .caution = Take { $part } off the truck. Straightening a bent part does not give its limit back.
reason-tie-down-home-made =
    .headline = { $part } is home-made or mended, so no maker has tested it.
    .caution = Take { $part } off the truck. A home-made part has no limit.
reason-tie-down-without-limit =
    .headline = The limit of { $part } is not known. Read it from its label or mark.
    .caution = Give the limit on the label of { $part }. For chain in the United States its grade and size do as well.
reason-tie-down-without-tensioner =
    .headline = The limit of the binder or tensioner of { $part } is not known. Read it from its mark.
    .caution = A tie-down holds what its weakest part holds. Give the limit on the binder of { $part }.
reason-label-not-said =
    .headline = Say which line of the label the limit of { $part } comes from.
    .caution = One label gives several numbers. WLL, LC, STF and breaking strength of one strap differ up to tenfold. Until you say which it is, { $part } counts for nothing.
reason-label-of-no-use =
    .headline = The limit of { $part } is not one for the road: give its WLL or LC.
    .caution = An MSL is for ships, a breaking strength is not a limit, and a lifting limit is not made for tying down. { $part } counts for nothing until its WLL or LC is known.
reason-anchor-label-not-said =
    .headline = Say which kind of limit the anchor’s plate gives.
    .caution = Until you say whether the plate of the anchor gives a WLL or an LC, no tie-down on it counts.
reason-anchor-label-of-no-use =
    .headline = The limit of the anchors is not one for tying down, so nothing counts on them.
    .caution = A lifting mark or a breaking strength on an anchor does not say what it holds as a tie-down anchor. Read the book of truck or trailer.
reason-anchor-not-known =
    .headline = The limit of the anchors is not known. Read it from the plate or the book of truck or trailer.
    .caution = A tie-down holds what its weakest part holds, and the anchor is one of its parts. A ring that somebody welded on has no limit, and the law bars such a weld on the frame of a commercial truck.

## The load itself

reason-rolling-not-said =
    .headline = Say first what keeps the load from rolling.
    .caution = A round load needs chocks, wedges or a cradle that cannot come loose, besides the tie-downs.
reason-free-to-roll =
    .headline = Nothing keeps this load from rolling. Chock it first.
    .caution = A round load needs chocks, wedges or a cradle that cannot come loose, besides the tie-downs.
reason-edges-not-said =
    .headline = Say first what the tie-downs lie on or rub on.
    .caution = An edge cuts webbing and bends chain. Look at each tie-down from hook to hook.
reason-bare-edges =
    .headline = A bare edge cuts a tie-down. Put edge protectors under each.
    .caution = The law asks for edge protection wherever a tie-down could be cut or chafed.
reason-coil-pattern =
    .headline = For a coil of this weight the law prescribes a pattern, and this sheet cannot see whether yours follows it.
    .caution = Eye up: one tie-down each way across the eye from corner to corner, one straight across, and blocking in front. Eye crosswise: one through the eye forward and one rearward, never crossed. Eye lengthwise: a cradle, two through the eye or over the top, and blocking.

## What the law counts

reason-law-needs-wll =
    .headline = The law here counts working load limits, and { $part } or its anchor is marked with an LC.
    .caution = An LC is half of what breaks the part, a WLL a quarter to a third. The law’s count leaves { $part } out until you give the WLL of strap or chain, binder and anchor.
reason-too-few =
    .headline = The law asks for { $needed } tie-downs at least; { $there } count here.
    .caution = There are too few tie-downs for the law: { $there } of { $needed }.
reason-too-few-known =
    .headline = Of { $needed } tie-downs that the law asks for, { $there } count so far.
    .caution = What is not known does not count: { $there } of { $needed } tie-downs so far.
reason-sum-short =
    .headline = The law asks for limits of { $law_asked } together and counts { $law_counted }.
    .caution = The counted limits fall short of half the weight. A tie-down from load to deck, or back to the same side, counts half its limit.
reason-sum-short-as-known =
    .headline = The law asks for limits of { $law_asked } together. What is known so far does not come to that.
    .caution = What is not known does not count towards half the weight.
reason-law-met =
    .headline = { $law_share ->
        [absent] The number of tie-downs is enough, and the forces need { $forces_used } of what is held. The smallest margin is against { $worst }.
       *[other] The law needs { $law_share } of the limits that it counts here, and the forces need { $forces_used } of what is held. The smallest margin is against { $worst }.
    }

## What the forces ask

reason-without-tension =
    .headline = Nobody knows how hard { $part } presses: its tension is not known.
    .caution = A strap over the top holds by its tension alone, through friction. A working load limit is never a tension. Give the STF on the label or a measured tension, or tie the load directly.
reason-tension-over-limit =
    .headline = The tension in { $part } is over the limit of its weakest part.
    .caution = Slacken it. Never put a pipe or bar (cheater) over the handle of a binder or ratchet.
not-held = Not held: { $motion }. It takes { $asked }, and only { $held } is held.
reason-slides =
    .headline = The worst is { $motion }: it takes { $asked } to hold the load, and only { $held } is held. Block it, or tie the load directly and more in line with that movement.
    .caution = { not-held }
reason-tips =
    .headline = The worst is { $motion }: it takes { $asked } to hold the load, and only { $held } is held. Tie it higher and outward, widen what it stands on, or lay it down.
    .caution = { not-held }
reason-tips-whatever =
    .headline = The worst is { $motion }, and these tie-downs cannot keep it upright, however many there are.
    .caution = Not held: { $motion }. Straps over the top are not counted here: to the sides their far leg goes slack, and lengthwise it depends on where they lie. Tie it high and outward, widen what it stands on, or lay it down.
reason-not-held-as-known =
    .headline = What is known so far does not hold this load by the forces.
    .caution = What is not known does not count. Fill it in before you judge the forces.
reason-lifts-off =
    .headline = Too little presses this load down on the deck.
    .caution = A load that the truck does not contain is held down with at least a fifth of its weight.
reason-forces-held =
    .caution = The forces are those of braking and turning on the road, each alone. No tie-down is made to hold a load in a rollover.

reason-straps-flat =
    .caution = Straps over the top lie flatter than 30° from the deck, so they press down very little. Tie the load directly.
reason-centre-not-known =
    .closing = Its center of gravity is taken at the top of the load, since it was not given.
    .caution = The height of the center of gravity is not known, so it is taken at the top of the load. If you give it, less may be needed against tipping.
reason-blocking-not-known =
    .closing = What it stands against in front is not counted by the forces, since its strength was not given.
    .caution = The law counts what the load stands against. The forces count nothing of it until its strength is known.
reason-web-and-chain =
    .caution = Straps and chains on one load do not share: the chain holds first, and the strap helps only after the chain has stretched or broken. European rules forbid the mix.
reason-machine-parts =
    .caution = Lower booms, buckets and blades to the deck and tie them too. Lock an articulated machine straight. Set its brake. On springs or soft tires the machine sinks and its tie-downs go slack: tie it at axles, wheels or tracks.
reason-own-rules =
    .caution = Logs, lumber in bundles, paper rolls, concrete pipe, containers, boulders and crushed cars have rules of their own, which come before this count.
reason-short-takes-first =
    .caution = Tie-downs of unlike length or angle do not share alike: the one that is short and in line with the movement is loaded first. The shares above count that.
reason-pulls-askew =
    .caution = Some tie-downs pull the load to one side more than others pull it back. The stronger side is counted only as far as the other side balances it, because a load that is held at one corner swings round.
reason-stand-evenly =
    .caution = This sheet does not ask where along the load a tie-down is hooked. Hook them as far ahead of the center of gravity as behind it, and alike to the left and right. A load that is held at one end only swings round.
reason-same-side-once =
    .caution = A tie-down that comes back to the same side counts as one tie-down here. One country counts it as two, another as one. This book uses the stricter count.
reason-law-holds-forces-met =
    .caution = US law asks for forces too (393.102(a)), and counts them as met where the load is tied down by its count (393.102(c)(3)). So its count decides the law’s side. The forces here are those of EN 12195-1, which ask for as much or more.
reason-dan-is-mostly-lc =
    .caution = The limit of { $part } was given in daN. Labels in daN nearly always give the LC, which is up to twice the WLL. Read the label again: if it says LC, choose LC.
reason-europe-marks-lc =
    .caution = A European label gives the LC. A WLL is counted as it is written, which is too low rather than too high. At the roadside an inspector may not accept the label.
reason-limit-as-marked =
    .caution = The forces are compared with the limit that is marked, WLL or LC. An LC is about half of what breaks the part, a WLL a quarter to a third: never compare the bare numbers.
reason-retighten =
    .caution = Stop and tighten within the first { $country ->
        [us] 50 miles, and then every 150 miles or 3 hours.
        [canada] 80 km.
       *[europe] few kilometers: loads settle.
    }
reason-marks-govern =
    .caution = Go by the marks on your gear and by the law where you drive, before this sheet.

## Refusals

refused-grade-not-understood = is not a grade of tie-down chain this book knows; grades are { $grades }. Or leave it empty and give the limit on the label.
refused-more-than-by-hand = is more than a hand ratchet leaves in a strap ({ $most }, common practice, no source): it may be a limit. Give the STF of the label.
refused-size-not-understood = { $reason }. Give the size of the chain such as 3/8 or 10 mm, or leave it empty.
refused-more-than-such-chain = is more than a chain of that grade and size bears, { $most } at most (our own bound, no source). Look at label, mark and size again.
refused-not-rated = is not rated: { $reason }. Or leave it empty and give the limit on the label.
refused-mark-against-table = does not agree with the law's table, which gives { $printed } for that grade and size. Look at the mark again. If it really says that, leave grade and size empty.
refused-limit-as-tension = is more than half of the limit. Half is { $half }, and no hand ratchet leaves more. Give the STF of the label, or a measured tension.
refused-straight-to-the-side = is not 0, but this tie-down runs straight to the side. Give 0, or choose a corner.
refused-same-side-pulls-sideways = does not fit: one that comes back to the same side pulls to the left, to the right, or to both sides with two of them.
refused-higher-than-the-load = is more than the load is high, { $height }. Measure from where it leaves the load, plumb down to the anchor.
refused-over-or-round-the-load = does not fit: a tie-down that goes over or round the load lies on its edges. Say what is under it there.
refused-goes-nowhere = is too short: this tie-down would go nowhere. Give how far it runs along, across and down.
refused-cannot-reach = does not reach: it has to run { $needed } at least.
refused-web-beside-chain = puts straps beside chains against the same movement. They do not share: the chain holds nearly all of it. Use one kind.
refused-over-half-of-the-load = is more than half of the load, { $half }, so it is not the nearer side. Measure to the nearer one.
refused-over-the-top-of-the-load = is higher than the top of the load, { $height }. Measure both from the deck.

## The working

step-counted = What the law counts of { $part }
    .formula = number × counted share × limit of the weakest part
    .numbers = { $number } × { $counted } × { OWN($limit) }
    .result = { $sum }
step-law = What the law asks
    .formula = { $asked_share } × weight, against what is counted
    .numbers = { $asked_share } × { OWN($load) } = { $law_asked }; counted { $law_counted }
    .result = { $law_share }
step-law-forces = What 49 CFR 393.102(a)(2) asks of working load limits, { $direction ->
        [forward] forward
        [rearward] rearward
       *[left] to the sides
    }; met by the count, so it decides nothing
    .formula = share of the weight, against what is held
    .numbers = { $share } × { OWN($load) } = { $asked }
    .result = { $held } held
step-slides = Sliding { $direction ->
        [forward] forward
        [rearward] rearward
       *[left] to the left
    }
    .formula = share of the weight against the better of: friction standing (weight, and { $arrives } × tension × sin angle / { $safety } of each strap); or { $moving } of that and the direct tie-downs; and the blocking
    .numbers = { $share } × { OWN($load) } = { OWN($asked) } against { OWN($standing) }, or { $moving } × { OWN($standing) } + { OWN($direct) }; and { OWN($blocking) }
    .result = { $held }
step-tips = Tipping { $direction ->
        [forward] forward
       *[left] to the side
    }
    .formula = (share × height of the center of gravity − its distance from the edge) × weight
    .numbers = ({ $share } × { OWN($centre) } − { OWN($edge) }) × { OWN($load) }
    .result = { $asked }

## Why a result is absent

absent-no-sum-in-europe = no sum in Europe: the law asks the forces
absent-not-all-known = not all is known
absent-not-read-there = cannot be read there
absent-nothing-counts = nothing counts
absent-nothing-holds = nothing holds it
absent-no-straps = no strap over the top with a known tension
absent-does-not-count = does not count
absent-stands-by-itself = it stands by itself

## The drawing

figure = A load of { $load }, { $length } long, { $width } wide and { $height } high, from above and from the side. Part of each limit used: { $tie_downs }. The smallest margin is against { $worst }.
figure-size = { OWN($size) }
figure-plan = From above
figure-side = From the side
figure-front = front →
figure-does-not-count = not counted
