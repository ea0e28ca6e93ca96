package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.List;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Journal;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;

/** A home on the disk with journal, index and kept sums. */
final class TestHouse implements AutoCloseable {
    private final JournalFolder journal;
    private final H2Index index;
    private final KeptService kept;

    TestHouse(Path folder) {
        HomeFolder home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        KeptView view = new KeptView();
        index = H2Index.open(folder.resolve("index"), journal, () -> List.of(view));
        kept = new KeptService(home, journal, index);
    }

    KeptService kept() {
        return kept;
    }

    Journal journal() {
        return journal;
    }

    H2Index index() {
        return index;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
