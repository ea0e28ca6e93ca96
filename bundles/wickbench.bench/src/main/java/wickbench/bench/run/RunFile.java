package wickbench.bench.run;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wickbench.api.json.JsonReader;

/**
 * What happens in one run, a line each, forced to the disk before it counts.
 *
 * <p>A line that a power cut tore was never told to anybody as kept, and is cut off on opening. When a line cannot be forced the
 * file takes no more: what cannot be kept must not look as if it were.
 */
final class RunFile implements Closeable {
    private static final String ENDING = ".jsonl";

    private final Path file;
    private final FileChannel channel;
    private boolean broken;

    private RunFile(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Returns the runs that a folder holds, oldest name first. */
    static List<Path> in(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static RunFile make(Path folder, String name) {
        try {
            Files.createDirectories(folder);
            Path file = folder.resolve(name + ENDING);
            RunFile made = new RunFile(
                    file,
                    FileChannel.open(
                            file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, StandardOpenOption.APPEND));
            force(folder);
            return made;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens a file to go on with it, its torn end cut off. */
    static RunFile open(Path file) {
        try {
            byte[] all = Files.readAllBytes(file);
            FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
            channel.truncate(whole(all));
            channel.position(whole(all));
            channel.force(true);
            return new RunFile(file, channel);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns what has happened, a torn last line left out. */
    static List<Noted> read(Path file) {
        try {
            byte[] all = Files.readAllBytes(file);
            List<Noted> noted = new ArrayList<>();
            String text = new String(all, 0, whole(all), StandardCharsets.UTF_8);
            int number = 0;
            for (String line : text.lines().toList()) {
                String source = file.getFileName() + ", line " + ++number;
                noted.add(RunReader.read(
                                source, JsonReader.readObject(source, line).orRefuse())
                        .orRefuse());
            }
            return noted;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns only when the line is on the disk. */
    void append(Noted noted) {
        if (broken) {
            throw new IllegalStateException(file + " could not be written before and takes no more");
        }
        try {
            ByteBuffer line =
                    ByteBuffer.wrap((RunJson.write(noted).canonical() + "\n").getBytes(StandardCharsets.UTF_8));
            while (line.hasRemaining()) {
                channel.write(line);
            }
            channel.force(false);
        } catch (IOException e) {
            broken = true;
            throw new UncheckedIOException(e);
        }
    }

    /** Ends the file for good: what stood in it is in the journal now. */
    void delete() {
        close();
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int whole(byte[] all) {
        int end = all.length;
        while (end > 0 && all[end - 1] != '\n') {
            end--;
        }
        return end;
    }

    private static void force(Path folder) throws IOException {
        if (!folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            // there a folder cannot be opened, and the file system keeps names in its own log
            return;
        }
        try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
            names.force(true);
        }
    }
}
