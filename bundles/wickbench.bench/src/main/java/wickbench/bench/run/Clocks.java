package wickbench.bench.run;

import org.osgi.annotation.versioning.ConsumerType;

/** Looks at the clock on the wall and at the steady one; cheap enough for the UI thread. */
@ConsumerType
@FunctionalInterface
public interface Clocks {
    Moment now();
}
