"""Which Sawside this is, and which form its messages have."""

VERSION = "0.1.0"
CONTRACT = 1
