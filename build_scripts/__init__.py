"""From tables, calc and docs to a finished site: what makes the pages, the runtime and the offline parts."""
