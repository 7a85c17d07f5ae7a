"""The tables, one file per subject, and nothing else."""
