"""Cases from the front, their sides, and shelves under load."""
