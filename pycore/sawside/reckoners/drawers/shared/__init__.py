"""What the questions about drawers are made of, by question. No file here is a question."""
