package wickbench.parts.plan;

import org.osgi.framework.Version;

/** A set by name and version. */
public record SetId(String name, Version version) {

    @Override
    public String toString() {
        return name + " " + version;
    }
}
