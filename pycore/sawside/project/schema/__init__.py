"""The document of a project: its shape, the checks that let one in, and its migrations."""
