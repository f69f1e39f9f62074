"""Settings that all tests share."""

from hypothesis import settings

# No test is timed: on a busy machine a slow example is no fault.
settings.register_profile("linkwright", deadline=None)
settings.load_profile("linkwright")
