"""Whether a case tips: what holds it down, what tips it, and what its anchors have to hold."""
