# Worksheet binder-check.

title = Are this tie-down chain and its binder still fit?
summary = Checks marks, links, hooks, handle and lock. Any damage removes the chain or the load binder from service.
story = The front left chain of the yard’s loader, with its ratchet binder.

## What is asked

input-kind = What kind of binder is it?
option-kind-lever = Lever binder
option-kind-ratchet = Ratchet binder
input-chain_marked = Can you read the grade or the limit on the chain?
input-binder_marked = Can you read the limit on the binder?
    .help = A working load limit. Some marks give the breaking strength; that is not a limit.
input-links_damaged = Any link that is cracked, bent, twisted, stretched, gouged or nicked?
    .help = Clean it. Run the whole chain through your hands.
input-worn = Any link or hook that is worn so that you can see or feel it?
input-knot = Any knot, twist under load, bolt or repair link in the chain?
input-hooks_bent = Any hook that is bent, twisted, opened or cracked?
input-handle_bent = Is anything bent or cracked on the binder: handle, pivot, screw, pawl?
input-locks = Does it lock, stay locked, and open as it should?
input-altered = Any weld, heat color, grinding or drilling?
input-chain_limit = Limit of the chain
    .help = From its mark, or from the table of its grade and size.
input-binder_limit = Limit on the binder

## What is found

result-limit_if_sound = Limit of the weaker one, if both are sound

## What it is judged by

part-binder = chain with its binder
criterion-no-chain-mark = No readable mark on the chain
    .listed = no readable mark on the chain
    .look-at = the mark of the chain
    .limit = grade or limit readable
criterion-no-binder-mark = No readable mark on the binder
    .listed = no readable mark on the binder
    .look-at = the mark of the binder
    .limit = limit readable
criterion-links = Link cracked, bent, stretched or gouged
    .listed = link cracked, bent, stretched or gouged
    .look-at = every link
    .limit = none
criterion-worn = Wear that you can see or feel
    .listed = wear that you can see or feel
    .look-at = the wear of links and hooks
    .limit = none: the law allows no wear
criterion-knot = Knot, bolt or repair link
    .listed = knot, bolt or repair link
    .look-at = any knot, bolt or repair link
    .limit = none
criterion-hooks = Hook bent, opened or cracked
    .listed = hook bent, opened or cracked
    .look-at = the hooks
    .limit = none
criterion-handle = Binder bent or cracked
    .listed = binder bent or cracked
    .look-at = handle, pivots and screw of the binder
    .limit = none
criterion-locks = Binder does not lock
    .listed = binder does not lock
    .look-at = how the binder locks
    .limit = locks and stays locked
criterion-altered = Welded, heated, ground or changed
    .listed = welded, heated, ground or changed
    .look-at = any weld, heat or change
    .limit = none

reason-binder-is-weaker =
    .caution = The binder holds less than the chain, so the tie-down holds what the binder holds.
reason-lever-flies =
    .caution = The handle of a lever binder can fly round when you close or open it, driven by the whole pull of the chain. Keep head and arms out of its path. A ratchet binder releases the pull slowly.
reason-no-bar-on-handle =
    .caution = Never put a pipe or bar over the handle. You then pull the chain past its limit without noticing.
reason-look-each-trip =
    .caution = Look at it before each trip, again within the first 50 miles, and then every 150 miles or 3 hours.
reason-inside-every-limit =
    .headline = This chain with its binder is inside every limit that was checked. Go by the limits that are marked on both.
absent-no-limit-given = not both limits given

## The drawing

look-mark = marks
look-links = links
look-hooks = hooks
look-handle = handle and lock
figure-gear = A chain with a binder, not to scale. Look at 1 the marks of binder and chain, 2 every link, 3 both hooks, 4 the handle and its lock.
