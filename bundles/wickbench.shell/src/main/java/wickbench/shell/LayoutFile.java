package wickbench.shell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import wickbench.api.check.Checked;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.widgets.Memory;

/**
 * The layout of the desk in {@code desk/layout.json} of the home, written on each change.
 *
 * <p>It is written to a side file and moved over the old one, so it is always whole. A file that cannot be read is set aside as
 * {@code layout-damaged.json} and the desk starts with its first layout; a layout is never worth a refusal to start.
 */
final class LayoutFile implements Memory {
    private final Path file;
    private final Executor writer;
    private final Consumer<String> notices;
    private final Map<String, Json> kept = new LinkedHashMap<>();

    /**
     * Reads what was kept.
     *
     * @param writer does the writing, one piece after the other
     * @param notices hears in plain words what went wrong, on any thread
     */
    LayoutFile(Path folder, Executor writer, Consumer<String> notices) {
        this.file = folder.resolve("layout.json");
        this.writer = writer;
        this.notices = notices;
        read();
    }

    @Override
    public synchronized Optional<Json.Obj> recall(String key) {
        return Optional.ofNullable(kept.get(key))
                .filter(Json.Obj.class::isInstance)
                .map(Json.Obj.class::cast);
    }

    @Override
    public synchronized void keep(String key, Json.Obj value) {
        if (!value.equals(kept.put(key, value))) {
            write();
        }
    }

    @Override
    public synchronized void forget(String key) {
        if (kept.remove(key) != null) {
            write();
        }
    }

    /** Forgets everything. */
    synchronized void reset() {
        kept.clear();
        write();
    }

    private void read() {
        try {
            if (!Files.exists(file)) {
                return;
            }
            Checked<Json> read = JsonReader.read(file.toString(), Files.readAllBytes(file));
            if (read instanceof Checked.Good<Json> good && good.value() instanceof Json.Obj layout) {
                kept.putAll(layout.members());
            } else {
                setAside();
            }
        } catch (IOException e) {
            notices.accept(ShellWords.get("layout.unreadable", file, e.getMessage()));
        }
    }

    private void setAside() throws IOException {
        Path aside = file.resolveSibling("layout-damaged.json");
        Files.move(file, aside, StandardCopyOption.REPLACE_EXISTING);
        notices.accept(ShellWords.get("layout.damaged", aside));
    }

    private void write() {
        String text = new Json.Obj(kept).canonical() + "\n";
        writer.execute(() -> write(text));
    }

    private void write(String text) {
        try {
            Files.createDirectories(file.getParent());
            Path side = file.resolveSibling("layout.json.part");
            Files.writeString(side, text, StandardCharsets.UTF_8);
            Files.move(side, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            notices.accept(ShellWords.get("layout.unwritable", file, e.getMessage()));
        }
    }
}
