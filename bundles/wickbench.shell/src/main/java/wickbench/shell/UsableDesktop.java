package wickbench.shell;

import java.util.Dictionary;
import java.util.Hashtable;

/** Says, as a service, that the window is open and its first page shows what it has to show. */
record UsableDesktop() {

    /** The launcher tells phases to those who trace a start. */
    static Dictionary<String, String> phase() {
        Dictionary<String, String> properties = new Hashtable<>();
        properties.put("wickbench.phase", "desktop usable");
        return properties;
    }
}
