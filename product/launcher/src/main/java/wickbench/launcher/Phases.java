package wickbench.launcher;

import java.util.function.Consumer;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceEvent;

/** Tells on standard error how long each phase of the start took, when asked to. */
public final class Phases {

    private static final String PROPERTY = "wickbench.phase";
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

    /** Tells of the phases that bundles reach: each is a service with the property {@code wickbench.phase}. */
    void follow(BundleContext context) {
        try {
            context.addServiceListener(this::registered, "(" + PROPERTY + "=*)");
        } catch (InvalidSyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private void registered(ServiceEvent event) {
        if (event.getType() == ServiceEvent.REGISTERED) {
            reached(String.valueOf(event.getServiceReference().getProperty(PROPERTY)));
        }
    }

    void reached(String phase) {
        long now = System.nanoTime();
        out.accept("%5d ms  %s".formatted((now - last) / NANOS_PER_MILLI, phase));
        last = now;
    }
}
