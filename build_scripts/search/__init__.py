"""What the one search of the book knows, made at build: how typed words are read, the ratings, the pages and their text.

    reading.py   spellings of sizes and grades, and the reader's words for each word of the trade (docs/words/LANG/search)
    cards.py     every rating as a card: part, grade, size, legs, angle, hitch, what it is for
    rows.py      rows of tables that a question can name by size or material
    texts.py     the text of the built pages by section
    make.py      puts these together and lets Node make the index

The scripts in build_scripts/scripts/search apply all of it, the same at build, in the page and in the tests.
"""
