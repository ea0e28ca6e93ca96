package wickbench.index;

import java.nio.file.Path;
import java.util.List;
import wickbench.api.index.Difference;
import wickbench.api.index.IndexView;
import wickbench.api.journal.Journal;
import wickbench.api.progress.Progress;

/** All tables made once more in a file of their own, to hold the others against; thrown away when closed. */
final class Scratch implements AutoCloseable {
    static final String FOLDER = "scratch";

    private final Path folder;
    private final House house;
    private boolean whole;

    Scratch(Path folder, Journal journal, List<IndexView> views) {
        this.folder = folder;
        H2File.delete(folder);
        house = new House(H2File.open(folder, notice -> {}), journal);
        house.furnish(views);
    }

    /** Takes in all that the journal has; false when the watcher stopped it. */
    boolean catchUp(Progress progress) {
        whole = true;
        house.catchUp((done, total) -> {
            whole = progress.at(done, total) && whole;
            return whole;
        });
        return whole;
    }

    /** Returns what stands otherwise in the tables of another house that is as far. */
    List<Difference> compare(House kept) {
        house.catchUp(Progress.NONE);
        Differences found = new Differences();
        for (ViewTables view : kept.all()) {
            // a view that could not take all in says so itself, and nothing may be read from it
            if (view.failure().isEmpty()) {
                new Comparison(view.view().name(), found)
                        .compare(view, house.tables(view.view().name()));
            }
        }
        return found.all();
    }

    @Override
    public void close() {
        house.close();
        H2File.delete(folder);
    }
}
