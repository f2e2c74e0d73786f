"""Studs behind a case, and the screws that go into them."""
