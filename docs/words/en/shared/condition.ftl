# Whether a part may be used at all: the same question on every sheet that holds a part against a rating.

input-condition = Mark and condition
    .help = Look at the whole part before you lift: the mark or tag, and any wear, weld, heat color or bend.
option-condition-marked-good = Mark or tag is readable; inspected and found good
option-condition-unmarked = No readable mark or tag
option-condition-worn = Worn
option-condition-welded = Welded, or with weld spatter on it
option-condition-heated = Heated, or with heat color
option-condition-bent = Bent, twisted or stretched
option-condition-home-made = Home-made or mended

reason-condition-not-looked-at =
    .headline = You have not said yet that its mark is readable and that it was found good, so it cannot be rated.
    .caution = Read the mark or tag and look the part over. Until then do not lift with it.
reason-condition-not-passed =
    .headline = Its last full inspection did not pass, so it cannot be rated.
    .caution = Do not use it until an inspection passes it. That you find it good today is not a full inspection.
reason-condition-unmarked =
    .headline = It has no readable mark, so nobody knows its working load limit.
    .caution = Do not lift with a part that has no readable mark or tag.
reason-condition-worn =
    .headline = It is worn. Check the wear against its limits first.
    .caution = Check the wear against its limits before you lift with it. Do not use it until it passes.
reason-condition-welded =
    .headline = It was welded, so it has no rating any more.
    .caution = Do not lift with it. No shop test gives a welded part its rating back.
reason-condition-heated =
    .headline = It was heated, so it has no rating any more.
    .caution = Do not lift with it. No shop test gives a heated part its rating back.
reason-condition-bent =
    .headline = It is bent, so it has no rating any more.
    .caution = Do not lift with it. Straightening a bent part does not give its rating back.
reason-condition-home-made =
    .headline = It is home-made, so no maker has tested it.
    .caution = Do not lift with it. A home-made part has no rating.
