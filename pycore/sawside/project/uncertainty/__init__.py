"""How sure a number is, from what each reading behind it may be off by."""
