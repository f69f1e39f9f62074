"""Records and units: converting, and what is written down."""
