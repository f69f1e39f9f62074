"""What an answer was made by. The build of the browser's Python writes the runtime's own name in here."""

RUNTIME = ""
"""The hash that names the runtime: of calc, its tables and words. Empty outside it."""
