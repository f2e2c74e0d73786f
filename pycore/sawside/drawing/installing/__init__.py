"""Drawings of the questions about putting a case up."""
