package wickbench.benchmarks;

/** Times pieces of work. */
final class Timed {
    private static final double NANOS_PER_SECOND = 1e9;
    private static final double NANOS_PER_MILLI = 1e6;

    private Timed() {}

    /** Work that may fail. */
    interface Work {
        void run() throws Exception;
    }

    static double perSecond(long count, Work work) throws Exception {
        return count / (nanos(work) / NANOS_PER_SECOND);
    }

    static double millis(Work work) throws Exception {
        return nanos(work) / NANOS_PER_MILLI;
    }

    private static double nanos(Work work) throws Exception {
        long start = System.nanoTime();
        work.run();
        return System.nanoTime() - start;
    }
}
