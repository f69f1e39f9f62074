"""Hauling: tying a load down."""
