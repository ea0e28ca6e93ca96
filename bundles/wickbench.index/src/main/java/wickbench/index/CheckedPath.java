package wickbench.index;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * Files that H2 opens under a scheme of ours, whose every block is held against a check sum when it is read.
 *
 * <p>H2 checks how its pages hang together but not what stands in them: without this, a flipped bit would be shown as a result.
 * Public, and made without arguments, because H2 makes one for each name.
 */
public final class CheckedPath extends FilePathWrapper {
    private Trust trust = new Trust();

    /** Makes the name of no file, for H2. */
    public CheckedPath() {}

    /** Lets H2 find files under a scheme of their own, so that what is read from them is told to {@code trust} and nobody else. */
    static CheckedPath register(Trust trust) {
        CheckedPath path = new CheckedPath();
        path.trust = trust;
        FilePath.register(path);
        return path;
    }

    @Override
    public String getScheme() {
        return "checked" + Integer.toHexString(System.identityHashCode(trust));
    }

    @Override
    public FilePathWrapper getPath(String name) {
        CheckedPath path = (CheckedPath) super.getPath(name);
        path.trust = trust;
        return path;
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        return new CheckedFile(new PlainFile(plain(this), mode), sums(this), trust);
    }

    @Override
    public void delete() {
        super.delete();
        forget(sums(this));
    }

    @Override
    public void moveTo(FilePath target, boolean replace) {
        forget(sums(target));
        super.moveTo(((CheckedPath) target).getBase(), replace);
        try {
            if (Files.exists(sums(this))) {
                Files.move(sums(this), sums(target));
            }
        } catch (IOException e) {
            // without sums nothing is checked at the next opening, as after a crash
            forget(sums(this));
        }
    }

    private static void forget(Path sums) {
        try {
            Files.deleteIfExists(sums);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Returns where the check sums of a file are kept while nobody has it open. */
    static Path sums(FilePath path) {
        return Path.of(plain(path) + ".sums");
    }

    private static Path plain(FilePath path) {
        FilePath plain = path;
        while (plain instanceof FilePathWrapper wrapper) {
            plain = wrapper.unwrap();
        }
        return Path.of(plain.toString());
    }
}
