"""What the questions of finishing share."""
