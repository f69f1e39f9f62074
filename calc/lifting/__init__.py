"""Lifting: what it weighs, how it hangs, what gives first."""
