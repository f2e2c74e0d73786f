"""The way in of a case: round the turn of a stair, and how many boxes it takes to get there."""
