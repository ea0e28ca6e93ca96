package wickbench.launcher;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Never starts. */
public final class FailingActivator implements BundleActivator {

    @Override
    public void start(BundleContext context) {
        throw new IllegalStateException("no good");
    }

    @Override
    public void stop(BundleContext context) {
        throw new IllegalStateException("was never started");
    }
}
