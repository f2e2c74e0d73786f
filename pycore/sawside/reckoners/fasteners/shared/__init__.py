"""What several questions of this subject share. No file here is a question."""
