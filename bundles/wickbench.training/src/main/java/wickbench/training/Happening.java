package wickbench.training;

import java.time.Instant;
import java.util.Map;
import wickbench.api.journal.Entry;

/**
 * Something in one person's file.
 *
 * @param at when it was done; the entry says when it was written
 * @param facts what it says, by name, in order
 */
public record Happening(Entry entry, Instant at, boolean signed, Map<String, String> facts) {}
