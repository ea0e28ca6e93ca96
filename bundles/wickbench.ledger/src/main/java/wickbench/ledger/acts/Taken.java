package wickbench.ledger.acts;

import wickbench.api.journal.Entry;

/**
 * A decision that was taken.
 *
 * @param stands false where a clash between stations was settled by another one
 */
public record Taken(Entry entry, Decided decided, boolean stands) {}
