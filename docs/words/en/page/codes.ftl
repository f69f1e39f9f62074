# The text and the code that stand under an answer and bring its numbers back, and why a text cannot be taken.
# These words go with calc into the page.

code-title = Bring these numbers back
code-drawn = The text below as a QR code
code-how = This text holds the worksheet and your numbers. Read the code with a camera, or type the text.
code-where = Where the text goes
code-made-by = Edition { $number }, tables and code { $hash }.
code-file = There is no text that brings these numbers back, because a drawing was given as a file.
code-too-long = There is no text that brings these numbers back, because there are too many of them. Keep the address of the worksheet's page.
code-one-each = One text would be too long for all these numbers, so each worksheet has its own. Open them one after another in one window, then come back to the page of the job.

## Why a text cannot be taken. It is refused whole: no box is filled.

code-refused-not-ours = This is not a text of this book. It begins with LW1. Nothing was opened.
code-refused-newer = This text was printed by a newer book, and this one cannot read it. Nothing was opened. Load the newest edition.
code-refused-group = Group { $number } after LW1 is not as it was printed: “{ $group }”. Compare it with the paper. Nothing was opened.
code-refused-damaged = Something is missing in this text, or it was changed. Compare it with the paper. Nothing was opened.
code-refused-unknown-sheet = This book has no worksheet “{ $sheet }”. The text is of another edition. Nothing was opened.
code-refused-unknown-box = This text holds a box or a choice that this book does not have, so it is of another edition. Nothing was opened. Type the numbers from the paper.
