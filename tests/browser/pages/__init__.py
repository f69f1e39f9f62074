"""What a reader sees on every kind of page: access, print, look-up and search."""
