"""Tables out of a project and into one: readings, parts, cuts."""
