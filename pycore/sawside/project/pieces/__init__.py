"""The pieces that lines make: their sizes and cuts, and the verdict on those already cut."""
