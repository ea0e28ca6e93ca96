package wickbench.parts.plan;

/** A bundle by its Maven coordinates. */
public record BundleId(String group, String artifact, String version) {

    /** Returns the name of its jar. */
    public String file() {
        return artifact + "-" + version + ".jar";
    }

    /** Returns its place in a folder of the Maven layout. */
    public String path() {
        return group.replace('.', '/') + "/" + artifact + "/" + version + "/" + file();
    }

    @Override
    public String toString() {
        return group + ":" + artifact + ":" + version;
    }
}
