package wickbench.journal;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.check.Refusal;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/**
 * Keeps a home for one program, for as long as it runs.
 *
 * <p>The operating system drops the lock when the program dies, however it dies. The file {@code holder.json} beside it only
 * says who holds it.
 */
final class HomeHold implements AutoCloseable {
    private final Layout layout;
    private final List<RandomAccessFile> lock;
    private final List<String> notices;
    private final String readOnly;

    private HomeHold(Layout layout, List<RandomAccessFile> lock, List<String> notices, String readOnly) {
        this.layout = layout;
        this.lock = lock;
        this.notices = notices;
        this.readOnly = readOnly;
    }

    /** A program that holds a home, or held it when it died. */
    private record Holder(long pid, Instant since) {
        static Holder self() {
            ProcessHandle self = ProcessHandle.current();
            return new Holder(self.pid(), self.info().startInstant().orElse(Instant.EPOCH));
        }

        String line() {
            return Json.object()
                            .with("pid", pid)
                            .with("since", since.toString())
                            .with("what", "wickbench")
                            .canonical() + "\n";
        }

        static Optional<Holder> read(Path path) throws IOException {
            if (!Files.isRegularFile(path)) {
                return Optional.empty();
            }
            String text = new String(Files.readAllBytes(path), StandardCharsets.UTF_8);
            return JsonReader.readObject(path.toString(), text).then(Holder::of) instanceof Checked.Good<Holder> good
                    ? Optional.of(good.value())
                    : Optional.empty();
        }

        private static Checked<Holder> of(Json.Obj object) {
            Fields fields = Fields.of("holder", object);
            long pid = fields.whole("pid");
            Optional<Instant> since = fields.optionalInstant("since");
            fields.text("what");
            return fields.finish(() -> new Holder(pid, since.orElse(Instant.EPOCH)));
        }
    }

    /**
     * Takes the home; where the folder cannot be written nothing is locked and the home is for reading only.
     *
     * @throws Refusal {@code home.held} when another program, or this one already, holds it
     */
    static HomeHold take(Disk disk, Layout layout) throws IOException {
        // asked first: closing a second handle of a locked file would drop the lock of the first (POSIX fcntl)
        if (Holder.read(layout.holder()).filter(Holder.self()::equals).isPresent()) {
            throw held(layout);
        }
        RandomAccessFile file;
        try {
            disk.makeFolder(layout.home());
            file = disk.lockable(layout.lock());
        } catch (IOException | OutOfMemoryError e) {
            String why = Say.words("read-only", layout.home(), EntryFiles.reason(e));
            return new HomeHold(layout, List.of(), List.of(), why);
        }
        if (file.getChannel().tryLock() == null) {
            file.close();
            throw held(layout);
        }
        return new HomeHold(layout, List.of(file), sign(disk, layout), "");
    }

    /** Says who holds the home; a full disk is no reason not to hold it. */
    private static List<String> sign(Disk disk, Layout layout) {
        try {
            disk.place(layout.holder(), Holder.self().line().getBytes(StandardCharsets.UTF_8));
            return List.of();
        } catch (IOException | OutOfMemoryError e) {
            return List.of(Say.words("failed.write", layout.holder(), EntryFiles.reason(e)));
        }
    }

    List<String> notices() {
        return notices;
    }

    /** Returns why the home is for reading only; empty when it can be written. */
    Optional<String> readOnly() {
        return Optional.of(readOnly).filter(why -> !why.isEmpty());
    }

    private static Refusal held(Layout layout) throws IOException {
        String who = Holder.read(layout.holder())
                .map(holder -> Say.words("held.by", Long.toString(holder.pid()), holder.since()))
                .orElseGet(() -> Say.words("held.unknown"));
        return new Refusal(Say.HELD, Say.words("held", layout.home(), who));
    }

    @Override
    public void close() throws IOException {
        for (RandomAccessFile file : lock) {
            Files.deleteIfExists(layout.holder());
            file.close();
        }
    }
}
