"""What a pull that was survived proves, as messages of shared/pull-proof."""

from __future__ import annotations

from calc.words.facts import message

WORDS = "shared/pull-proof"
"""The scope of the words, for a worksheet to share."""
PROVES = message("proves")
DOES_NOT_PROVE = message("does-not-prove")

__all__ = ["DOES_NOT_PROVE", "PROVES", "WORDS"]
