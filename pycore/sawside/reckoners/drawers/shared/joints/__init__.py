"""Box joints and dovetails: where their pins and tails go, and how they are told."""
