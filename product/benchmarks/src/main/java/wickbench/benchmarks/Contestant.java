package wickbench.benchmarks;

/** One who runs a lap. */
interface Contestant {

    String name();

    /** Runs once and returns what was measured, in the unit of the contest. */
    double lap() throws Exception;

    /** Lets go of what it holds. */
    default void close() throws Exception {}
}
