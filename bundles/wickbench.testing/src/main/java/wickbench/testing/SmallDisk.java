package wickbench.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A small file system of its own, in memory, where the one who tests may mount one. */
public final class SmallDisk implements AutoCloseable {
    private final Path folder;

    private SmallDisk(Path folder) {
        this.folder = folder;
    }

    /**
     * Mounts it.
     *
     * @param size as {@code mount -o size=} takes it
     * @return empty where this user, or this container, may not mount
     */
    public static Optional<SmallDisk> mount(Path folder, String size) throws IOException {
        Files.createDirectories(folder);
        boolean mounted = run("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", folder.toString());
        return mounted ? Optional.of(new SmallDisk(folder)) : Optional.empty();
    }

    public Path folder() {
        return folder;
    }

    /** Lets nobody write any more, not even one whom no right stops. */
    public void readOnly() throws IOException {
        if (!run("mount", "-o", "remount,ro", folder.toString())) {
            throw new IOException("cannot be made read-only: " + folder);
        }
    }

    @Override
    public void close() throws IOException {
        if (!run("umount", folder.toString())) {
            throw new IOException("cannot be unmounted: " + folder);
        }
    }

    /** Runs a program and tells whether it ended well; one that is not there did not. */
    public static boolean run(String... command) throws IOException {
        try {
            Process process = new ProcessBuilder(List.of(command))
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor() == 0;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            return false;
        }
    }
}
