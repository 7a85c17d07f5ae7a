"""Tables in and out: one CSV file per subject, read with every fault named, written unaltered."""
