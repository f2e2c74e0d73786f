"""Sanding and finishing: what is done before, when each coat goes on, what goes with it."""
