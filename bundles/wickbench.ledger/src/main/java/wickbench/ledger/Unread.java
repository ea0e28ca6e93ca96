package wickbench.ledger;

/**
 * Entries whose body has a newer version than is understood here.
 *
 * @param v that version
 * @param entries how many
 */
public record Unread(String kind, int v, long entries) {}
