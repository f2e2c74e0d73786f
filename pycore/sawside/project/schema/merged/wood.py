"""Questions of the subject wood that became part of another one."""

from sawside.project.schema.merged.became import Became

MERGED: dict[str, Became] = {}
