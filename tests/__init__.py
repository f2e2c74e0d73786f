"""What the promises are tested and measured with."""
