"""Tests of Linkwright."""
