package wickbench.launcher;

import org.apache.felix.framework.Logger;
import org.osgi.framework.Bundle;
import org.osgi.framework.ServiceReference;

/** Puts what the framework itself complains about on standard error, one line each: its own default is standard output, with traces. */
final class FrameworkLog extends Logger {

    @Override
    @SuppressWarnings("rawtypes") // as the class above declares it
    protected void doLog(Bundle bundle, ServiceReference service, int level, String message, Throwable cause) {
        if (level <= LOG_WARNING) {
            String where = bundle == null ? "framework" : bundle.getSymbolicName();
            System.err.println("wickbench: " + where + ": " + message + (cause == null ? "" : " (" + cause + ")"));
        }
    }
}
