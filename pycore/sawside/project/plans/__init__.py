"""A cutting plan: a project's pieces out of its wood, made, kept, told and followed at the saw."""
