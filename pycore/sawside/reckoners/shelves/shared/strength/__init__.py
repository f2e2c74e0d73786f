"""How a loaded shelf is asked for, what each way of solving it finds, and what is told of it."""
