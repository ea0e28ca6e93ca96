package wickbench.stock;

import wickbench.api.journal.EntryRef;

/**
 * An entry that says something of a lot which cannot follow from what went before.
 *
 * @param code what: a move, or {@code kit}, {@code not-received}, {@code strips}
 * @param claimed what it claims
 * @param stands what stands against it
 */
public record Clash(EntryRef entry, String code, String claimed, String stands) {}
