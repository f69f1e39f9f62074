# Words of the table marks-of-parts. A key that is not here is looked for in common.ftl.

question = What must be marked on this part?
description = What the law and the standards want to see on a chain, a sling, a shackle, an eyebolt or a bolt before it carries anything.

## Read before you use it

note-what-is-suspicious = Suspicious: a mark that is painted, scratched or stamped by hand; a number without its unit; a tag that names another number of legs than you count; a new tag on an old sling. Common practice, no source.

## Cautions; table.toml says of which kind each is

caution-no-mark-no-lift = If you cannot read what the rule asks for, do not lift with it.

## Words of the columns

word-item-round_sling = Round sling
word-item-bolt = Bolt
word-rule-must-carry = It must carry
word-rule-tag-colour = Color of the tag
word-rule-label-colour = Color of the label
word-rule-label-lists = What the label lists
word-rule-read-the-tag = Read the tag
word-rule-no-mark-no-use = No mark, no use
word-rule-letter = Letter
word-rule-head-lines = Lines on the head
word-rule-american-type = Type, American web sling
