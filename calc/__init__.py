"""The trade of lifting, pulling and hauling, computed from cited tables.

`python -m calc list` names every worksheet; `calc.answering.answer` gives the answer of one.
Nothing in here knows of the site, of HTML or of a browser, and nothing is imported but the standard library.
"""
