"""Cases: the space between walls that one goes into, and one being stood up."""
