"""The command line: one command a file, and linear text that can be read aloud."""
