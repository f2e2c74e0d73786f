<<<<<<< HEAD
"""Drawings of a whole case, of its parts, and of how it comes into its place and stays there."""
=======
"""Cases and what is fixed to them, as the questions about them draw them."""
>>>>>>> frame
