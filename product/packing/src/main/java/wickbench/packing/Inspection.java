package wickbench.packing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import wickbench.launcher.CannotStart;
import wickbench.launcher.InstallSet;
import wickbench.launcher.Product;

/** Looks whether an edition's folder could start on its platform, without starting it. */
final class Inspection {

    private final Path folder;
    private final Target target;
    private final List<String> faults = new ArrayList<>();

    private Inspection(Path folder, Target target) {
        this.folder = folder;
        this.target = target;
    }

    /** Returns what is wrong, a line each; empty when nothing is. */
    static List<String> of(Path folder, Target target) throws IOException {
        var inspection = new Inspection(folder, target);
        inspection.scripts();
        inspection.bundles();
        return List.copyOf(inspection.faults);
    }

    private void scripts() {
        Path script = folder.resolve("bin").resolve(target.script());
        if (!Files.isRegularFile(script)) {
            faults.add("no launch script " + script);
        } else if (!Files.isExecutable(script)) {
            faults.add("the launch script cannot be run: " + script);
        }
    }

    /** What {@code complete} asks for is all there, and nothing besides. */
    private void bundles() throws IOException {
        try {
            List<Path> asked = InstallSet.of(Product.of(folder), List.of("complete"), target.platform());
            List<Path> there = Papers.files(folder.toAbsolutePath().normalize().resolve("repo"));
            there.stream().filter(jar -> !asked.contains(jar)).forEach(jar -> faults.add("nobody asks for " + jar));
            fragments(asked);
        } catch (CannotStart reasons) {
            faults.addAll(reasons.lines());
        }
    }

    private void fragments(List<Path> jars) throws IOException {
        int fragments = 0;
        for (Path jar : jars) {
            try (var file = new JarFile(jar.toFile())) {
                if (file.stream().anyMatch(entry -> UnsignedJar.isSignature(entry.getName()))) {
                    faults.add("still signed: " + jar);
                }
                Attributes manifest = file.getManifest().getMainAttributes();
                String host = manifest.getValue("Fragment-Host");
                if (host != null && host.startsWith("org.eclipse.swt;")) {
                    fragments++;
                    platform(jar, manifest);
                }
            }
        }
        if (fragments != 1) {
            faults.add("one window fragment is needed, and there are " + fragments);
        }
    }

    private void platform(Path jar, Attributes manifest) {
        String os = manifest.getValue("SWT-OS");
        String arch = manifest.getValue("SWT-Arch");
        if (!target.platform().os().equals(os) || !target.platform().arch().equals(arch)) {
            faults.add(jar + " is for " + os + " on " + arch);
        }
    }
}
