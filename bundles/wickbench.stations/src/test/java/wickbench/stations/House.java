package wickbench.stations;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;
import wickbench.api.index.IndexView;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.StationId;
import wickbench.attachments.AttachmentView;
import wickbench.bench.BenchView;
import wickbench.bench.owed.OwedView;
import wickbench.figures.commands.KeptView;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.ledger.desk.ActsView;
import wickbench.ledger.services.LedgerView;
import wickbench.people.PeopleView;
import wickbench.people.RecoveryView;
import wickbench.people.profile.ProfileView;
import wickbench.plant.book.PlantView;
import wickbench.stock.room.StockView;
import wickbench.training.book.TrainingView;

/** A station with journal, index and the views of the house, and a clock that may be wrong. */
final class House implements AutoCloseable {
    static final List<IndexView> VIEWS = List.of(
            new BenchView(),
            new OwedView(),
            new LedgerView(),
            new ActsView(),
            new StockView(),
            new TrainingView(),
            new PlantView(),
            new PeopleView(),
            new RecoveryView(),
            new ProfileView(),
            new AttachmentView(),
            new KeptView(),
            new Words());

    final Home home;
    final JournalFolder journal;
    final H2Index index;

    /** @param wrong how far its clock is off */
    House(Path folder, String station, Path share, Duration wrong) {
        HomeFolder real = new HomeFolder(folder);
        home = new Late(real, () -> real.clock().instant().plus(wrong));
        journal = JournalFolder.open(home, entries -> {});
        if (journal.founding().isEmpty()) {
            journal.found(new Founding(new StationId(station), ZoneOffset.UTC, OptionalLong.empty()));
        }
        index = H2Index.open(folder.resolve("index"), journal, () -> VIEWS);
        journal.others().share(Optional.of(share));
    }

    static List<String> names() {
        return VIEWS.stream().map(IndexView::name).toList();
    }

    List<String> tables() {
        return Tables.of(index, names());
    }

    Sharing exchange() {
        return journal.others().exchange();
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }

    /** A home whose clock is wrong. */
    private record Late(Home home, InstantSource clock) implements Home {
        @Override
        public Path folder() {
            return home.folder();
        }

        @Override
        public RandomGenerator chance() {
            return home.chance();
        }

        @Override
        public SimulatedClock simulate(long seed, Instant start) {
            return home.simulate(seed, start);
        }

        @Override
        public OptionalLong simulatedSeed() {
            return home.simulatedSeed();
        }
    }
}
