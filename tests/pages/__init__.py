"""The built pages as files, and the functions that make them."""
