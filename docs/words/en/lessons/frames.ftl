# Drawings of the pages on a shop's own frame. A message is the caption of its drawing; its parts are the labels.

beam-rolls = What a light I-beam of steel takes before it gives way, as a part of what it takes where it can only bend down (dashed). With { $first } that nothing holds, { $left7 } is left; with { $middle }, { $left14 }; with { $last }, { $left21 }.
    .bends = held all along: it bends down
    .axis = length that nothing holds from twisting

frame-tips = Two frames of one height seen along the beam, without their own weight. The left one stands on half its height and tips when the hoist pulls { $narrow } off plumb. The right one stands on its whole height and tips at { $wide }.

weld-throat = A fillet weld between two plates, cut across. Its legs are { $leg }. The shortest way through it, its throat, is { $throat }.
    .throat = throat { $throat }
