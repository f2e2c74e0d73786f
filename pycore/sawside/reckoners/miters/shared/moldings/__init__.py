"""Moldings on edge along walls and around cases: wrapped, coped, scarfed."""
