"""Angles and what a saw makes of them, exact or correctly enclosed. Imports: errors, lengths."""
