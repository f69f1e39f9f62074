"""Words apart from findings: what is to be said (facts), in which words (catalogue), written how (writer)."""
