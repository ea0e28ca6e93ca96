package wickbench.benchmarks;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import wickbench.api.home.HomeFolder;
import wickbench.api.index.IndexView;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;

/** A home with journal and index, as the program opens it. */
final class Site implements AutoCloseable {
    private static final int BATCH = 1_000;

    final HomeFolder home;
    final JournalFolder journal;
    final H2Index index;

    Site(Path folder, IndexView... views) {
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        if (journal.founding().isEmpty()) {
            journal.found(new Founding(new StationId("bench-1"), ZoneId.of("UTC"), OptionalLong.empty()));
        }
        index = H2Index.open(folder.resolve("index"), journal, () -> List.of(views));
    }

    /** Makes the draft with that number. */
    interface Drafts {
        Draft draft(int number);
    }

    /** Appends so many, a thousand at once, and so with a checkpoint for each thousand. */
    void fill(int count, Drafts drafts) {
        fill(count, BATCH, drafts);
    }

    void fill(int count, int atOnce, Drafts drafts) {
        for (int from = 0; from < count; from += atOnce) {
            List<Draft> batch = new ArrayList<>(atOnce);
            for (int number = from; number < Math.min(count, from + atOnce); number++) {
                batch.add(drafts.draft(number));
            }
            journal.append(batch);
        }
    }

    /** Returns what pages and reports show of it. */
    wickbench.api.profile.Site facts() {
        return wickbench.api.profile.Site.of(Optional.empty(), journal.founding());
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
