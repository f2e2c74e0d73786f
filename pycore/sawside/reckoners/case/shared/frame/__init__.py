"""A face frame: its outside and widths, where its members are, and how they are told."""
