"""Laws that every worksheet obeys, by its declaration."""
