"""A phone-size Chromium, tapped as a thumb would."""
