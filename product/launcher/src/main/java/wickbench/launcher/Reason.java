package wickbench.launcher;

import java.util.regex.Pattern;
import org.osgi.framework.BundleException;

/** Says in one line why a bundle does not run. */
final class Reason {

    private static final Pattern REQUIREMENT = Pattern.compile("missing requirement \\[.*?\\)\\] ([\\w.]+); (\\(.*)");
    private static final Pattern WANTED = Pattern.compile("\\(osgi\\.wiring\\.(?:package|bundle|host)=([^)]*)\\)");

    private Reason() {}

    static String of(String bundle, BundleException failure) {
        if (failure.getType() == BundleException.RESOLVE_ERROR) {
            return "bundle " + bundle + " cannot be resolved: " + missing(failure.getMessage());
        }
        Throwable cause = failure.getCause() == null ? failure : failure.getCause();
        return "bundle " + bundle + " does not start: " + cause;
    }

    /** The framework's message nests: the innermost missing requirement is the one to mend. */
    private static String missing(String message) {
        int innermost = message.lastIndexOf("missing requirement");
        var requirement = REQUIREMENT.matcher(innermost < 0 ? "" : message.substring(innermost));
        if (!requirement.find()) {
            return message.replaceAll("\\s+", " ");
        }
        var wanted = WANTED.matcher(requirement.group(2));
        String what = wanted.find() ? wanted.group(1) : requirement.group(2);
        return "nothing installed offers " + what + " (" + requirement.group(1) + ")";
    }
}
