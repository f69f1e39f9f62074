# Drawings of the pages on strength. A message is the caption of its drawing; its parts are the labels.

pull-axis = pull, { $unit }
stretch-axis = growth in length, %

grade-bars = Mean stress in the two sides of a link of new 3/8 in chain, by grade. The top of each bar is the stress at which new chain breaks at the earliest. The shaded foot is the stress at the rating, and the dashed line is the proof load at twice the rating. { $grades }.
    .grade = Grade { $grade }: { $rated } at the rating, { $breaks } at the break
    .axis = grade
    .stress = mean stress, N/mm2
    .break = break
    .rating = rating

one-curve = New grade 80 chain, 3/8 in, pulled until it parts. It carries its rating of { $rating } with { $at_rating } of growth, and springs back. At { $proof } the maker proves it. It parts at { $breaks } or more, { $grown } longer than new. The dashed line shows how an overloaded chain comes back: it stays longer. Breaking it takes about { $times } times the work of pulling it to its rating. The curve is a model between the printed points.
    .rating = rating { OWN($pull) }
    .proof = proof load { OWN($pull) }
    .break = least break

two-toughnesses = Three chains of about the same strength, pulled to the break. Full line: grade 80. Dashed line: grade 70, with the shaded area as the work that it takes. Dotted line: a brittle link. The work that grade 70 takes before it parts is { $share } of that of grade 80, and the brittle link takes almost none. The curves are a model between printed points.
    .lifting = grade 80
    .tie-down = grade 70
    .brittle = brittle

factor-stairs = What an ordinary bad day takes from a design factor of 4. Starts and stops of a hoist: { $starts }. A wire worn by a tenth: { $worn }. A weight guessed a tenth too low: { $guess }. An angle read as 45° that is 40°: { $angle }. What is left is { $left }. If the load is then let go all at once, { $jerked } is left. Below 1 the part breaks.
    .whole = new
    .starts = starts
    .worn = wear
    .guess = weight
    .angle = angle
    .jerk = jerk
    .breaks = breaks below this line

energy-triangles = A load of { $load } falls { $fall } onto { $sling } of sling. Each triangle is the work that the sling takes up to stop it. Chain stretches { $chain_way } and so pulls { $chain }. Nylon web of the same rating stretches { $nylon_way } and pulls { $nylon }.
    .axis = stretch, { $unit }
    .chain = chain
    .nylon = nylon web

drop-on-chain = A load of { $load } falls onto { $sling } of new 3/8 in grade 80 chain. Dashed line: the pull if the chain were a perfect spring. Full line: the pull in chain that can yield. After a fall of { $fall } that is { $peak } instead of { $spring }, and the chain stays { $lasting } longer. The full line is a model of sound new chain. It is never a height that you may let a load fall.
    .axis = height of the fall, { $unit }
    .rating = rating
    .proof = proof load
    .break = least break

marbles = A bag of twenty marbles, nineteen of them dark (filled in the drawing) and one light. You draw one, and it is the light one. That happens once in twenty tries.
    .drawn = you drew this
