"""What is asked about the places of shelves, by how their openings are made, and each such way."""
