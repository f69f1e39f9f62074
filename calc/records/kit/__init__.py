"""A shop's own parts: what is kept of each, what it is rated for, when it must be looked at, and the file that holds them."""
