"""What is measured of the core: right answers by the thousand, and how long they take."""
