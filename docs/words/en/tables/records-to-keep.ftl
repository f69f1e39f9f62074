# Words of the table records-to-keep. A key that is not here is looked for in common.ftl.

question = What should be written down about lifting gear?
description = Entries that tags, test sheets and inspection records carry.

## Words of the columns

word-item-sling_tag = Sling tag
word-item-test_sheet = Test sheet
word-item-inspection = Inspection
word-item-pre_use = Before use
word-item-proof_test = Proof test
word-item-mark = Mark
word-rule-chain = Chain
word-rule-navy = Navy
word-rule-chain-month = Chain
word-rule-first-inspection = First inspection
word-rule-no-record = No record
word-rule-certificate = Certificate
word-rule-traceable = Traceable
