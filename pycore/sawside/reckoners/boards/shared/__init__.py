"""What the questions about boards share."""
