package wickbench.figures.ui;

import java.nio.file.Path;
import java.util.List;
import wickbench.api.home.HomeFolder;
import wickbench.figures.commands.KeptService;
import wickbench.figures.commands.KeptView;
import wickbench.figures.sums.KeptSums;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.report.chart.ScreenPainter;

/** A home on the disk, and the page over it. */
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

    FiguresPage page() {
        return new FiguresPage(List.of(new ScreenPainter()), kept);
    }

    KeptSums kept() {
        return kept;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
