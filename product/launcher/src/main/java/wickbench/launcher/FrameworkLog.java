package wickbench.launcher;

import org.apache.felix.framework.Logger;
import org.osgi.framework.Bundle;
import org.osgi.framework.ServiceReference;

/** Takes what the framework itself complains about; its own default would be standard output. */
final class FrameworkLog extends Logger {

    @Override
    @SuppressWarnings("rawtypes") // as the class above declares it
    protected void doLog(Bundle bundle, ServiceReference service, int level, String message, Throwable cause) {
        if (level <= LOG_WARNING) {
            Complaint.tell(bundle == null ? "framework" : bundle.getSymbolicName(), message, cause);
        }
    }
}
