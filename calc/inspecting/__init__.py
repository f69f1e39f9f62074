"""Inspecting: may this worn, bent or marked part still be used."""
