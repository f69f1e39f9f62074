"""The inputs of worksheets as a short text that can be printed, read by a camera or typed, and brought back whole."""
