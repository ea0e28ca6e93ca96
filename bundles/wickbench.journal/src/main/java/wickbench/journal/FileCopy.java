package wickbench.journal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Hash;
import wickbench.api.progress.Progress;

/** Copies files and hashes them on the way; for one run. */
final class FileCopy {
    private static final int BUFFER = 1 << 16;

    private final byte[] buffer = new byte[BUFFER];
    private final long total;
    private final Progress progress;
    private long done;

    /** @param total bytes of all files together, of which the watcher hears as half the work; the other half is verifying */
    FileCopy(long total, Progress progress) {
        this.total = total;
        this.progress = progress;
    }

    /** Copies the first bytes of a file; a secret one is made readable by its owner only. */
    Manifest.Item copy(Path from, long length, Path home, String name) throws IOException {
        Path to = home.resolve(name);
        Files.createDirectories(to.getParent());
        make(to, name.startsWith("keys/"));
        MessageDigest digest = sha256();
        long left = length;
        try (InputStream in = Files.newInputStream(from);
                OutputStream out = Files.newOutputStream(to)) {
            while (left > 0) {
                int read = in.read(buffer, 0, (int) Math.min(left, BUFFER));
                if (read < 0) {
                    break;
                }
                digest.update(buffer, 0, read);
                out.write(buffer, 0, read);
                left -= read;
                tell(read);
            }
        }
        return new Manifest.Item(name, length - left, Hash.of(digest.digest()));
    }

    private void tell(int more) {
        done += more;
        if (!progress.at(Math.min(done, total), Math.max(1, 2 * total))) {
            throw new Refusal("backup.stopped", Say.words("backup.stopped"));
        }
    }

    /** Returns a watcher for verifying, which is the second half. */
    Progress second() {
        return (at, of) ->
                progress.at(total + (of == 0 ? total : Math.round((double) total * at / of)), Math.max(1, 2 * total));
    }

    private static void make(Path file, boolean secret) throws IOException {
        if (secret) {
            Owners.makeFile(file);
        } else {
            Files.createFile(file);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
