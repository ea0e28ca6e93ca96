package wickbench.ledger.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Map;
import java.util.TreeMap;
import wickbench.api.journal.Hash;

/** The files of a pack that is being made, each hashed while it is written. */
final class PackFiles {
    static final String SUMS = "SHA256SUMS";

    private final Path folder;
    private final Map<String, Hash> sums = new TreeMap<>();

    PackFiles(Path folder) {
        this.folder = folder;
    }

    /** What goes into a file. */
    @FunctionalInterface
    interface Content {
        void write(java.io.OutputStream out) throws IOException;
    }

    void add(String name, Content content) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        MessageDigest digest = sha256();
        try (DigestOutputStream out =
                new DigestOutputStream(new java.io.BufferedOutputStream(Files.newOutputStream(file)), digest)) {
            content.write(out);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        sums.put(name, Hash.of(digest.digest()));
    }

    void addText(String name, String text) throws IOException {
        add(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    void add(String name, InputStream bytes) throws IOException {
        try (bytes) {
            add(name, bytes::transferTo);
        }
    }

    /** Writes the list of all files, in the form of {@code sha256sum}, and returns its hash. */
    Hash list() throws IOException {
        StringBuilder text = new StringBuilder();
        sums.forEach((name, sum) -> text.append(sum).append("  ").append(name).append('\n'));
        Files.writeString(folder.resolve(SUMS), text, StandardCharsets.UTF_8);
        return Hash.ofContent(text.toString());
    }

    /** Writes what comes after the list. */
    void seal(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
