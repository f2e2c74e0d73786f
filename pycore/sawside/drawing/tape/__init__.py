"""Tapes and rulers, and what is laid along them."""
