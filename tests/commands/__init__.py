"""The one command, the build and the server: what goes wrong ends in one readable line."""
