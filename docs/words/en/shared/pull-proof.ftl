# What a pull that was survived proves, and what it does not.

proves = It held this one slow pull, in this direction and at this temperature.
does-not-prove = It does not show that the part will hold a jerk, cold, or the next pull. It does not find a growing crack or a place that heat hardened or softened. No pull in a shop gives a rating back.
