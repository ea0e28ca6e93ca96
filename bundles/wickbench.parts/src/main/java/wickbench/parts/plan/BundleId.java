package wickbench.parts.plan;

import java.util.Optional;

/**
 * A bundle by its Maven coordinates.
 *
 * @param classifier says which of several jars of one name is meant, such as a language
 */
public record BundleId(String group, String artifact, Optional<String> classifier, String version) {

    /** Returns the name of its jar. */
    public String file() {
        return artifact + "-" + version + classifier.map(word -> "-" + word).orElse("") + ".jar";
    }

    /** Returns its place in a folder of the Maven layout. */
    public String path() {
        return group.replace('.', '/') + "/" + artifact + "/" + version + "/" + file();
    }

    @Override
    public String toString() {
        return group + ":" + artifact + classifier.map(word -> ":jar:" + word).orElse("") + ":" + version;
    }
}
