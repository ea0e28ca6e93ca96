package wickbench.launcher;

import java.util.Hashtable;
import java.util.function.ToIntFunction;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Answers how many arguments it was given. */
public final class SampleApplication implements BundleActivator {

    @Override
    public void start(BundleContext context) {
        var properties = new Hashtable<String, Object>();
        properties.put("wickbench.application", "main");
        ToIntFunction<String[]> application = arguments -> arguments.length;
        context.registerService(ToIntFunction.class, application, properties);
    }

    @Override
    public void stop(BundleContext context) {
        // the framework takes the service back
    }
}
