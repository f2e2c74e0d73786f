"""Cases and what is fixed to them, as the questions about them draw them."""
