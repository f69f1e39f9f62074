# Words of the table chain-hooks. A key that is not here is looked for in common.ftl.

question = Which hook goes on which chain?
description = How a hook is matched to chain: by the size and grade of the chain, and never rated below it.

## Read before you use it

note-if-hook-marked-chain = If the hook is marked for that chain, the chain's rating in the table of its grade is the most the two may carry.
note-mark-hook-governs-no = The mark on the hook governs. A hook without a mark does not lift.
note-common-practice-no-source-held = Common practice, no source. Held by the next rule: a fitting may not be rated below its chain.
note-test-sound-hook-whose-maker = That test is for a sound hook whose maker gives no data. It brings no welded, bent or heated hook back.

## Cautions; table.toml says of which kind each is

caution-back-to-back-is-one = Two hooks back to back carry what one hook carries.

## Words of the columns

word-item-chain_hook = Chain hook
word-item-sling_hook = Sling hook
word-item-slip_hook = Slip hook
word-item-grab_hook = Grab hook
word-rule-matched-to-chain = Matched to chain
word-rule-rated-at-least-as-chain = Rated no lower than the chain
word-rule-rated-at-least-as-chain-washington = Rated no lower than the chain (Washington)
word-rule-no-shop-made = Nothing home-made
word-rule-no-maker-data = No data from its maker
word-rule-load-in-throat = Load in throat
word-rule-mousing = Mousing
word-item-master_link = Master link
word-item-middle_link = Middle link
word-rule-rated-for-whole-sling = Rated for the whole sling
word-rule-rated-for-two-legs = Rated for two legs
