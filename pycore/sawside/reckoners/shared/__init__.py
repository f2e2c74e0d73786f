"""What several questions share: fields, answers and their words. No file here is a question."""
