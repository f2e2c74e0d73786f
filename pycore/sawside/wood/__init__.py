"""Tables about wood, each row with its source and status. Imports: errors, lengths."""
