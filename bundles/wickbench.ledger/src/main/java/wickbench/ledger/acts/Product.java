package wickbench.ledger.acts;

import java.time.Instant;

/**
 * Product that a result is about.
 *
 * @param name the batch; empty where it has no name
 * @param since from when on it stands so
 */
public record Product(String name, ProductState state, Instant since) {}
