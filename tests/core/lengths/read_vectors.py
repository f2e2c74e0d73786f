"""What the reader reads and what it refuses, as tables for the eye.

Cells are parted by " | ". `READ` and `ANGLES` say what a text comes to, `ECHOED` how it is told
again, `REFUSED` at which character it stops, `REMEDIES` what is said to do about it.
"""

from fractions import Fraction

MM = Fraction(5, 127)


def _cells(block, between):
    cells = (cell.strip() for line in block.splitlines() for cell in line.split(" | "))
    return [tuple(cell.rsplit(between, 1)) for cell in cells if cell]


def _inches(told):
    number, _, unit = told.partition(" ")
    return Fraction(number) * (MM if unit == "mm" else 1)


_READ = """
31 = 31 | 31.5 = 63/2 | .0625 = 1/16 | 22. = 22 | 007 = 7
5/8 = 5/8 | 33/16 = 33/16 | 5 7/12 = 67/12 | 7 13/16 = 125/16 | 7  13/16 = 125/16
7-13/16 = 125/16 | 7-13/16″ = 125/16 | 7‑13/16 = 125/16 | 7 33/16 = 145/16
½ = 1/2 | ⅔ = 2/3 | 5½ = 11/2 | ⅒ = 1/10 | 5 ⅞″ = 47/8 | 5-½ = 11/2 | 3⁄4 = 3/4 | 5³⁄₄ = 23/4
5 ³⁄₄ = 23/4 | ⁵/₈ = 5/8 | ¹¹⁄₁₆ = 11/16 | ¹¹⁄16 = 11/16 | ⅟₈ = 1/8
31" = 31 | 31″ = 31 | 31” = 31 | 31'' = 31 | 31’’ = 31 | 31′′ = 31 | 31“ = 31 | 31in = 31
31 inch = 31 | 31 inches = 31 | 31 in. = 31 | 31 IN = 31
6' = 72 | 6′ = 72 | 6’ = 72 | 6 ft = 72 | 6 foot = 72 | 6 feet = 72 | 6ft. = 72 | 10'6 = 126
10' 6 = 126 | 10'6" = 126 | 10'-6" = 126 | 10 ft. 6 in. = 126 | 6'-7-9/32" = 2537/32
6′ 7 9/32″ = 2537/32 | 6'7½" = 159/2 | 6 ft 7 9/32 in = 2537/32 | 6ft-7in = 79
2 yd = 72 | 2 yards 1 ft 3 in = 87 | 18 mm = 18 mm | 18mm = 18 mm | 4.5 cm = 45 mm | 2 m = 2000 mm
1 m 20 cm = 1200 mm | 1 m 2 cm 3 mm = 1023 mm
7-13/16 + 3 = 173/16 | 3 - 5/16 = 43/16 | 3-5 = -2 | 3 − 5/16 = 43/16 | 37 9/16-3/4 = 589/16
6'-7' = -12 | 6' - 7" = 65 | 6' -7" = 65 | 3–5/16 = 53/16 | 3−5/16 = 43/16
2 × 3/4 + 31 5/8 = 265/8 | 2*3 = 6 | 2x3 = 6 | 2 X 3 = 6 | 2·3 = 6 | 1/2 of 37 9/16 = 601/32
1/2 OF 37 9/16 = 601/32 | 37 9/16 ÷ 2 = 601/32 | 37 9/16 / 2 = 601/32 | 8 ÷ 1/2 = 16
8 / 1/2 = 16 | 1.5 / 3 = 1/2 | 1/2.5 = 2/5 | (3 + 4) × 2 = 14 | -(3 + 4) × 2 = -14 | ((((3)))) = 3
-7-13/16 = -125/16 | +3 = 3 | 3 - -2 = 5 | 2 × -3 = -6 | -½ = -1/2 | 2 + 3 × 4 = 14
3 in × 4 = 12 | 4 × 3 in = 12 | 3 + 2 mm = 391/127 | 12 in × 12 in ÷ 6 in = 24
2" × 3" × 4" ÷ 6" ÷ 2" = 2
"""
READ = [(text, _inches(told)) for text, told in _cells(_READ, " = ")]
READ += [("\u00a031\u2009in ", 31), ("\t31\n", 31)]

_ANGLES = """
45 = 45 | 22 1/2 = 45/2 | 22.5° = 45/2 | 45 deg = 45 | 180/8 = 45/2 | 90 - 22½ degrees = 135/2
"""
ANGLES = [(text, Fraction(told)) for text, told in _cells(_ANGLES, " = ")]

_ECHOED = """
7-13/16 + 3 = 7 13/16″ + 3″ | 3-5 = 3″ − 5″ | 10'6 = 10′ 6″ | 6'-7-9/32" = 6′ 7 9/32″
2x3/4+31 5/8 = 2 × 3/4″ + 31 5/8″ | 1/2 of 37 9/16 = 1/2 of 37 9/16″
37 9/16 / 2 = 37 9/16″ ÷ 2 | (3+1in)*2 = (3″ + 1″) × 2 | 18mm+.5 = 18 mm + 0.5″
-(5½) = −(5 1/2″)
"""
ECHOED = _cells(_ECHOED, " = ")

_REFUSED = """
3//4 @ 2 | 37 9//16 @ 5 | 37 9// 16 @ 5 | 37 9//1/2 @ 5 | 37 9/ 16 @ 3 | 37 9/x @ 3
1/ @ 1 | /2 @ 0 | 3 5/0 @ 4 | 3 ÷ 0 @ 2 | 3 ÷ (2 - 2) @ 2 | 3 5/16 7 @ 7 | 3 5 @ 2
½½ @ 1 | 7" 6' @ 3 | 3 mm 2 cm @ 5 | 6' 2 mm @ 3 | 1 m 20 @ 4 | 5" 3 @ 3 | 1,024 @ 1 | 1,5 @ 1
1e3 @ 1 | 1E-3 @ 1 | 2^3 @ 1 | 2² @ 1 | 2**3 @ 2 | ٣ @ 0 | ３ @ 0 | Ⅷ @ 0 | 3 + ๓ @ 4 | (3 @ 0
3 + (4 @ 4 | 3) @ 1 | () @ 1 | 3(4) @ 1 | (3) 4 @ 4 | 3 + @ 2 | --3 @ 1 | 3 × × 4 @ 4 | 3 abc @ 2
3 furlong @ 2 | in @ 0 | 5"' @ 2 | 1/2/4 @ 3 | 1.2.3 @ 3 | . @ 0 | 1234567890123 @ 0
1/1234567890123 @ 0 | 3 in + 3 in × 3 in @ 5 | 3 in × 3 in + 1 @ 12 | 8 in ÷ 2 in + 3 in @ 12
2 ÷ (3 in × 3 in) @ 2 | 1 in × 1 in × 1 in × 1 in @ 19 | __import__('os') @ 0 | 1.5/3 @ 3
31 5 + 2 @ 3 | 31.5/ 8 @ 4 | 3 + x @ 4 | 3; 4 @ 1 | 😀 @ 0
"""
REFUSED = [(text, "unreadable", int(at)) for text, at in _cells(_REFUSED, " @ ")]
REFUSED += [("", "missing", 0), ("   ", "missing", 0), ("9" * 201, "unreadable", 0)]
REFUSED += [("6000 ft", "range", 0), ("-6000 ft", "range", 0)]

_REMEDIES = """
3//4 : Write it as 3/4.
1,024 : Write 1.024, or the whole number in plain digits.
31,5 : Write 31.5.
0,125 : Write 0.125.
1200,125 : Write 1200.125.
1.024,5 : Type the number again with one decimal point.
1,024.5 : Type the number again with one decimal point.
1.2.3 : Type the number again with one decimal point.
31_5 : Put a space, a sign or a number in its place.
31)5 : Add a (, or put a space in its place.
7" 6' : Put feet before inches.
31.5/8 : Write 31 5/8 or 31.5 ÷ 8.
.5/8 : Write 5/8 or .5 ÷ 8.
22./7 : Write 22 ÷ 7.
31 5 + 2 : Add / and the bottom number, or put + − × between them.
3 5/16 7 : Put +, − or × between them.
37 9//16 : Write 37 9/16.
37 9//16 + 2 : Write 37 9/16.
6' 7 9//32 : Write 7 9/32.
37 9/÷16 : Write 37 9/16.
37 9//1/2 : Use just one.
37 9// : Use just one.
37 9 / 16 : Write 37 9/16, or put a sign between 37 and 9.
37 9/x : Add the bottom number after the slash.
37 9.5/16 : Put +, − or × between them.
"""
REMEDIES = _cells(_REMEDIES, " : ")
