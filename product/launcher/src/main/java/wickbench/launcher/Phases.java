package wickbench.launcher;

import java.util.function.Consumer;

/** Tells on standard error how long each phase of the start took, when asked to. */
public final class Phases {

    private static final long NANOS_PER_MILLI = 1_000_000;

    private final Consumer<String> out;
    private long last = System.nanoTime();

    private Phases(Consumer<String> out) {
        this.out = out;
    }

    /** Says nothing. */
    public static Phases silent() {
        return new Phases(line -> {});
    }

    /** Speaks when the system property {@code wickbench.trace} is set. */
    static Phases whenTraced() {
        return new Phases(isTraced() ? System.err::println : line -> {});
    }

    static boolean isTraced() {
        return System.getProperty("wickbench.trace") != null;
    }

    void reached(String phase) {
        long now = System.nanoTime();
        out.accept("%5d ms  %s".formatted((now - last) / NANOS_PER_MILLI, phase));
        last = now;
    }
}
