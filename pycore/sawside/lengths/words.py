"""Numbers in English words, for a screen reader and for a helper who is called out to."""

_SMALL = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
    "fifteen sixteen seventeen eighteen nineteen"
).split()
_TENS = "zero ten twenty thirty forty fifty sixty seventy eighty ninety".split()
_SIZES = ((10**9, "billion"), (10**6, "million"), (1000, "thousand"), (100, "hundred"))
_PARTS = {
    2: ("half", "halves"),
    4: ("quarter", "quarters"),
    8: ("eighth", "eighths"),
    16: ("sixteenth", "sixteenths"),
    32: ("thirty-second", "thirty-seconds"),
    64: ("sixty-fourth", "sixty-fourths"),
}


def counted(number, one, many=None):
    """A number of things: "1 hole", "2 holes"; `many` is a plural that takes more than an s."""
    return f"{number} {one if number == 1 else many or f'{one}s'}"


def listed(words):
    """Several in a sentence: 9″, 12″ and 14″."""
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"


def whole_in_words(number):
    """A whole number from 0 to 999,999,999,999 in words: "three hundred five"."""
    for size, name in _SIZES:
        if number >= size:
            rest = number % size
            head = f"{whole_in_words(number // size)} {name}"
            return f"{head} {whole_in_words(rest)}" if rest else head
    if number < 20:
        return _SMALL[number]
    ten, one = divmod(number, 10)
    return f"{_TENS[ten]}-{_SMALL[one]}" if one else _TENS[ten]


def fraction_in_words(numerator, denominator):
    """A fraction in words: "eleven sixteenths", "one half"; "seven over twelve" off the tape."""
    if denominator not in _PARTS:
        return f"{whole_in_words(numerator)} over {whole_in_words(denominator)}"
    one, many = _PARTS[denominator]
    return f"{whole_in_words(numerator)} {one if numerator == 1 else many}"


def parts_in_words(denominator, number=2):
    """What a `number` of parts are called: "sixteenths", and "sixteenth" for 1."""
    one, many = _PARTS[denominator]
    return one if number == 1 else many


def decimal_in_words(text):
    """A decimal number digit by digit after its point: "917.6" is nine hundred … point six."""
    whole, _, decimals = text.partition(".")
    words = whole_in_words(int(whole))
    if decimals:
        words += " point " + " ".join(_SMALL[int(digit)] for digit in decimals)
    return words
