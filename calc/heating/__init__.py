"""Heat: what it does to rated hardware, and how to tell."""
