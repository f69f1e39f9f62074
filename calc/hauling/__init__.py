"""Hauling: what must hold a load on a truck or trailer, by law and by the forces."""
