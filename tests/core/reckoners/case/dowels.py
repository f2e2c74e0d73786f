"""A doweled joint, as the tests of that question fill it in."""

KEY = "dowel_layout"
JOINT = {"rail": "2 1/4", "thickness": "3/4", "stile": "1 3/4"}
