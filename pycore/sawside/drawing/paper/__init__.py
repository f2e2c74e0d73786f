"""What is printed at true size. Millimeters of the sheet."""
