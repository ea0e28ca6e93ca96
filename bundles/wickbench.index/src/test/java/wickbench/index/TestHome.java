package wickbench.index;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.home.HomeFolder;
import wickbench.api.index.IndexView;
import wickbench.api.journal.Journal;
import wickbench.journal.JournalFolder;

/** A home on the disk with a journal and an index, to be closed and opened again. */
final class TestHome implements AutoCloseable {
    private final Path folder;
    private final boolean owned;
    private JournalFolder journal;
    private H2Index index;
    private volatile List<IndexView> views = List.of();

    private TestHome(Path folder, boolean owned) {
        this.folder = folder;
        this.owned = owned;
        open();
    }

    static TestHome in(Path folder) {
        return new TestHome(folder, false);
    }

    /** Makes a home that is deleted when closed. */
    static TestHome made() throws IOException {
        return new TestHome(Files.createTempDirectory("wickbench-index"), true);
    }

    void views(IndexView... now) {
        views = List.of(now);
    }

    Journal journal() {
        return journal;
    }

    H2Index index() {
        return index;
    }

    long size() {
        return journal.stations().stream().mapToLong(journal::size).sum();
    }

    Path file() {
        return folder.resolve("index/h2-2.5.252/house.mv.db");
    }

    /** Where the check sums of the file lie while nobody has it open. */
    Path sums() {
        return Path.of(file() + ".sums");
    }

    Path folder() {
        return folder;
    }

    void reopen() {
        closeIndex();
        journal.close();
        open();
    }

    void reopenIndex() {
        index = H2Index.open(folder.resolve("index"), journal, () -> views);
    }

    void closeIndex() {
        index.close();
    }

    private void open() {
        journal = JournalFolder.open(new HomeFolder(folder), entries -> {});
        reopenIndex();
    }

    @Override
    public void close() {
        closeIndex();
        journal.close();
        if (owned) {
            H2File.delete(folder);
        }
    }
}
