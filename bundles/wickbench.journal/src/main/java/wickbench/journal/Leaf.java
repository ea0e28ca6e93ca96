package wickbench.journal;

import wickbench.api.journal.Hash;

/** A line, without its line end, and its leaf hash. */
record Leaf(byte[] line, Hash hash) {}
