package wickbench.packing;

import java.util.List;
import java.util.stream.Stream;
import wickbench.launcher.Platform;

/**
 * A platform for which an edition is laid.
 *
 * @param name as it stands in the name of the archive
 * @param script the one of the product's two launch scripts that it takes
 */
record Target(String name, Platform platform, String script) {

    private static final List<Target> ELSEWHERE = List.of(
            new Target("windows-x86_64", new Platform("win32", "x86_64"), "wickbench.cmd"),
            new Target("macos-x86_64", new Platform("macosx", "x86_64"), "wickbench"),
            new Target("macos-aarch64", new Platform("macosx", "aarch64"), "wickbench"));

    /** This machine, the only one for which a Java can be made here. */
    static Target here() {
        Platform here = Platform.here();
        return new Target(here.os() + "-" + here.arch(), here, "wickbench");
    }

    /** This machine first, then those whose editions can only be prepared. */
    static List<Target> all() {
        return Stream.concat(Stream.of(here()), ELSEWHERE.stream()).toList();
    }

    boolean isHere() {
        return platform.equals(Platform.here());
    }
}
