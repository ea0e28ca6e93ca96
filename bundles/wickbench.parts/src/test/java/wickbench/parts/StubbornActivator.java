package wickbench.parts;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Does not start. */
public final class StubbornActivator implements BundleActivator {
    @Override
    public void start(BundleContext context) {
        throw new IllegalStateException("not today");
    }

    @Override
    public void stop(BundleContext context) {}
}
