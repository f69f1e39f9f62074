"""Scale drawings as SVG, made from results."""
