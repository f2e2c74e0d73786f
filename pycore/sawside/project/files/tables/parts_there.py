"""Which parts of a table a project has already, by their content, as a merge knows its entries."""

from sawside.project.files.merge_settings import base_of


class PartsThere:
    """The parts of a project; each stands for one row of a table at most."""

    def __init__(self, told, in_passing):
        """`told` are (entry, cells as a table tells it); `in_passing` columns are not compared."""
        self._in_passing = in_passing
        self._named = {}
        for entry, cells in told:
            part = (_content(entry), cells)
            for name in {_folded(each) for each in (cells["Name"], base_of(cells["Name"])) if each}:
                self._named.setdefault(name, []).append(part)
        self._found = set()

    def has(self, cells, act):
        """Whether a row is here already, as `act` would keep it or as it would be told."""
        compared = cells.keys() - self._in_passing
        content = _content(act)
        for part in self._named.get(_folded(act["name"]), ()):
            typed, there = part
            is_told = all(cells[column].strip() == there[column] for column in compared)
            if (is_told or typed == content) and id(part) not in self._found:
                self._found.add(id(part))
                return True
        return False


def _folded(name):
    return name.strip().casefold()


def _content(line):
    """What a line, or the act that keeps one, asks for."""
    about = line.get("about", {}).values()
    told = [{key: text for key, text in each.items() if text} for each in about]
    return line["reckoner"], line["values"], [each for each in told if each]
