# Words of the pocket book and of the blank tags.

pocket-book = Pocket book
pocket-fold-1 = Print on one side of the paper. Fold it in half each way, then in eight, and open it again.
pocket-fold-2 = Cut along the dashed line in the middle.
pocket-fold-3 = Fold it lengthwise, push the two ends together until the cut opens, and close it with this page in front.
pocket-fold-4 = This book is no permission to lift. The mark and the tag on the part govern. Throw it away when there is a newer edition.
pocket-tie-down = Chain to tie down
pocket-tie-down-1 = The counted limits add up to at least half the weight of the load. From the truck to the load, half a limit counts. Over the load to the other side, a whole one counts.
pocket-tie-down-2 = The weakest part counts: chain, binder, hook or anchor point.
pocket-may-lift = May it lift?
    .never = Never lift with chain that was welded, heated or straightened.
pocket-angles = Sling angles
    .never = Never flatter than { $least }° from the horizontal.
    .basket = A basket with upright legs holds twice the straight rating. Flatter legs hold less: divide by the factor above.
pocket-heat-hot = { $grade }, hot
pocket-heat-after = { $grade }, after
pocket-lift = Two legs of chain
pocket-clips = Wire rope clips
    .saddle = The saddle of a clip sits on the live side, the U-bolt on the dead end. Tighten the nuts again after the first load.
pocket-limits = When is it out?
    .never = Never weld, heat, bend or grind a part to make it pass. Destroy what is out.
pocket-sources = Sources
    .more = Charts for the wall and gauges at true scale: about/on-the-wall.html.

## Tags

blank-tags = Tags to cut out and write on
    .how = Each tag is 148 by 76 mm. Punch the dashed circle. Write with a marker that stands oil.
tag-do-not-use = Do not use
    .foot = Destroy it: cut it through. Do not straighten, weld or heat it. Do not take this tag off.
tag-line-part = Part and own number
tag-line-found = What was found
tag-line-by = Tagged by, date
tag-inspected = Inspected
    .foot = This is the yard’s own reminder. It repeats the maker’s tag and is none. Where the two differ, or the maker’s tag is gone, do not use the part.
tag-line-number = Own number
tag-line-mark = Mark as read on the part
tag-line-rating = Rating as on the maker’s tag
tag-line-dates = Inspected on, next by, by whom
