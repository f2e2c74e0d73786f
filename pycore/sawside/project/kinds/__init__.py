"""The kinds of entries, reading, line and note, and the checks of what is kept of each."""
