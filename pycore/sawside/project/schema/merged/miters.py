"""Questions of the subject miters that became part of another one."""

from sawside.project.schema.merged.became import Became

MERGED: dict[str, Became] = {}
