"""Pulling and proving: forces, gauges, trials."""
