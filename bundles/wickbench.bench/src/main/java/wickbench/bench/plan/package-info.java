/** The command {@code plan}: times for a run, without recording anything. */
package wickbench.bench.plan;
