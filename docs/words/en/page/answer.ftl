# Words that stand in an answer beside what calc says. They go with it into the page, for the reader's own answers.

## The word that opens a caution, by its kind. Cautions over a table say the same.

caution-word-warning = Careful
caution-word-prohibition = Stop
caution-word-mandatory = You must
caution-word-note = Note

# Stands before the verdict of an answer to the book's own example, on the page, in the bar and on paper.
example = Example:

# Over the links to worksheets that go on with what was found here.
next = Go on with these numbers
