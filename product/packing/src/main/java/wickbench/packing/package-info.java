/**
 * Lays editions: the product cut down to the features of one room, for one platform, with a Java of its own where one can be made.
 *
 * <p>An edition is a product folder like any other. What makes it one is its {@code features/complete.json}, which requires less, and that it
 * holds nothing that this does not require.
 */
package wickbench.packing;
