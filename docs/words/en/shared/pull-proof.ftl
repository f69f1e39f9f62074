# What a pull that was survived proves, and what it does not.

proves = It held this pull once, steadily, in this direction, at this temperature.
does-not-prove = It says nothing about a crack that grows, a jerk, cold steel, a zone hardened or softened by heat, or the next pull. No pull in a shop gives a rating back.
