# Whether a part may be used at all: the same question on every sheet that holds a part against a rating.

input-condition = Mark and condition
    .help = Look at all of it before you lift: the mark or tag, and any wear, weld, heat colour or bend.
option-condition-marked-good = Mark or tag readable, looked over and found good
option-condition-unmarked = No readable mark or tag
option-condition-worn = Worn
option-condition-welded = Welded on, or weld spatter on it
option-condition-heated = Heated, or with heat colour
option-condition-bent = Bent, twisted or stretched
option-condition-home-made = Home-made or mended

reason-condition-not-looked-at =
    .headline = Nobody has said yet that its mark is readable and that it was found good, so it cannot be rated.
    .caution = Read the mark or tag and look the part over. Until then do not lift with it.
reason-condition-unmarked =
    .headline = It has no readable mark, so nobody knows what it may carry.
    .caution = No readable mark or tag: do not lift with it.
reason-condition-worn =
    .headline = It is worn. Judge it by its limits first.
    .caution = Hold the wear against its limits before you lift with it. Until it passes it is out of use.
reason-condition-welded =
    .headline = It was welded on: it has no rating any more.
    .caution = Do not lift with it. No test in a shop gives the rating of a welded part back.
reason-condition-heated =
    .headline = It was heated: it has no rating any more.
    .caution = Do not lift with it. No test in a shop gives the rating of a heated part back.
reason-condition-bent =
    .headline = It is bent: it has no rating any more.
    .caution = Do not lift with it. Straightening does not bring a bent part back.
reason-condition-home-made =
    .headline = It is home-made: no maker has tested it.
    .caution = Do not lift with it. A home-made part has no rating.
