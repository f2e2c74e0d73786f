"""The steps of a project: those that are not done, and the same as a calendar."""
