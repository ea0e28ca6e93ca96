package wickbench.packing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Copies a jar without the signature that it may carry.
 *
 * <p>Classes of a signed jar are never shared between starts, and each must be checked against its hash. The archive of an edition is what
 * is to be trusted or not, not a jar in it. A jar without signature is copied byte for byte.
 */
final class UnsignedJar {

    /** The earliest that a zip can tell, so that the same jar gives the same bytes. */
    private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 1, 1, 0, 0);

    private UnsignedJar() {}

    static void copy(Path from, Path to) throws IOException {
        try (ZipFile jar = new ZipFile(from.toFile())) {
            if (jar.stream().noneMatch(entry -> isSignature(entry.getName()))) {
                Files.copy(from, to);
                return;
            }
            try (var out = new ZipOutputStream(Files.newOutputStream(to))) {
                for (ZipEntry entry : jar.stream().toList()) {
                    if (!isSignature(entry.getName())) {
                        copy(jar, entry, out);
                    }
                }
            }
        }
    }

    /** A signature file of the Jar File Specification, or the block that goes with it. */
    static boolean isSignature(String entry) {
        return entry.toUpperCase(Locale.ROOT).matches("META-INF/[^/]+\\.(SF|RSA|DSA|EC)");
    }

    private static void copy(ZipFile jar, ZipEntry entry, ZipOutputStream out) throws IOException {
        var copied = new ZipEntry(entry.getName());
        copied.setTimeLocal(ALWAYS);
        out.putNextEntry(copied);
        try (var in = jar.getInputStream(entry)) {
            if (entry.getName().equals(JarFile.MANIFEST_NAME)) {
                withoutHashes(new Manifest(in)).write(out);
            } else {
                in.transferTo(out);
            }
        }
        out.closeEntry();
    }

    /** The hash of each entry stands in a section of its name. */
    private static Manifest withoutHashes(Manifest signed) {
        signed.getEntries().clear();
        return signed;
    }
}
