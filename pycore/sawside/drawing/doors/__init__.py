"""Drawings of the questions about doors."""
