"""What several questions about putting a case up share. No file here is a question."""
