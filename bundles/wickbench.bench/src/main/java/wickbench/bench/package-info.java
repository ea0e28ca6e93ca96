/**
 * The bench without a screen: methods as issued, the gates, run sheets, and the one door by which a reading is recorded.
 *
 * <p>Nothing is exported: all of it is reached through the ports of {@code wickbench.api}.
 */
package wickbench.bench;
