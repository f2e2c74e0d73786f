"""What goes out of a project as a file and comes in again: backups, merges, tables."""
