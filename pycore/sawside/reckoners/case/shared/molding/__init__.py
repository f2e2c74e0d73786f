"""A molding around a case: what is asked, its pieces, and what is told of them."""
