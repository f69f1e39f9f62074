"""The full road of a reader in Chromium, Firefox and WebKit: the same tests in each, served and from disk."""
