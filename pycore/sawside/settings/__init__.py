"""How lengths are read and told, and what is set once: clearances, kerf, own tapes and materials.

Imports: errors, lengths.
"""
