/**
 * What is owed: its entries, the facts kept of them, and the door to both.
 *
 * <p>Nothing is exported: it is reached through {@link wickbench.api.owed.OwedWork}.
 */
package wickbench.bench.owed;
