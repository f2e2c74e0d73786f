"""What the questions about doors share. No file here is a question."""
