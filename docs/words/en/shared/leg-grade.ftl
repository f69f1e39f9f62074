# May chain of this grade lift: the same question on every sheet that holds legs against the figure of a tag.

input-leg_kind = What the legs are
option-leg_kind-chain = Chain
option-leg_kind-wire-rope = Wire rope
option-leg_kind-web = Web, round or fiber rope sling
input-grade = Grade of the chain
    .help = As marked on the links. Grades 70, 43 and 30 never lift. A mark 8 is read by the metric tables.
option-grade-80 = Grade 80
option-grade-100 = Grade 100
option-grade-8 = Grade 8, metric sling (EN 818)
option-grade-5 = Grade 5, metric sling (EN 818)
option-grade-M = Grade 4, marked M, metric sling (EN 818)
option-grade-4 = A mark 4 alone
option-grade-70 = Grade 70, tie-down only
option-grade-43 = Grade 43, tie-down only
option-grade-30 = Grade 30, tie-down only

reason-ties-down-only =
    .headline = Grade { $mark } chain is for tying loads down. It has no lifting rating.
    .caution = Grade { $mark } chain is for tying loads down. It has no lifting rating. Use chain of grade 80 or 100 with a readable tag.
reason-may-tie-down =
    .headline = A mark { $mark } can be grade 43 chain, which is for tying loads down and has no lifting rating. Read the sling's tag.
    .caution = A mark { $mark } alone does not say whether the chain may lift. European lifting chain of grade 4 is marked M. Without a tag do not lift with it.
reason-kind-not-said =
    .headline = You have not said what the legs are. Tie-down chain has no lifting rating. Say what they are, and give the grade if they are chain.
    .caution = A rating is of no use if you do not know which part it belongs to. Until you know, do not lift with it.
reason-grade-not-said =
    .headline = You have not given the grade of the chain. Chain of grade 70, 43 or 30 has no lifting rating. Read the grade on its links.
    .caution = Do not lift with chain of unknown grade, whatever figure its tag shows.

refused-no-chain-no-grade = does not fit: only chain has a grade. Leave it out, or say that the legs are chain.
