"""What can be done to a project, what undoes it, and what follows from it."""
