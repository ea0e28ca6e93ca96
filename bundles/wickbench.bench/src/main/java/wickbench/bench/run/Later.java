package wickbench.bench.run;

import java.time.Duration;
import org.osgi.annotation.versioning.ConsumerType;

/** Runs something after a while; a sleeping machine sleeps through it. */
@ConsumerType
@FunctionalInterface
public interface Later {
    void in(Duration wait, Runnable act);
}
