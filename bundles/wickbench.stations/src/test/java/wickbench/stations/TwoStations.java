package wickbench.stations;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;

/** Two stations of one site with one shared folder, which is taken away while they act without seeing one another. */
final class TwoStations implements AutoCloseable {
    static final PersonId ADA = new PersonId("p-01");

    final House bench;
    final House quality;

    private final Path root;

    /**
     * Founds them.
     *
     * @param ahead how far the clock of quality assurance runs ahead of the bench's
     */
    TwoStations(Path root, Duration ahead) throws IOException {
        this.root = root;
        Path share = Files.createDirectory(root.resolve("share"));
        bench = new House(root.resolve("bench"), "bench", share, Duration.ZERO);
        quality = new House(root.resolve("quality"), "quality", share, ahead);
        exchange();
    }

    List<House> both() {
        return List.of(bench, quality);
    }

    /** Lets each see what the other has recorded. */
    void exchange() {
        for (int round = 0; round < 2; round++) {
            bench.exchange();
            quality.exchange();
        }
    }

    /** Lets two stations act while the folder is away. */
    void apart(Runnable acts) {
        move("share", "away");
        acts.run();
        move("away", "share");
        exchange();
    }

    private void move(String from, String to) {
        try {
            Files.move(root.resolve(from), root.resolve(to));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Records at one station what the other does not see before it records too. */
    static EntryRef append(House house, Draft draft) {
        return house.journal.append(List.of(draft)).get(0).ref();
    }

    static ClashDesk desk(House house) {
        return new ClashDesk(house.home, house.journal, house.index, (act, draft, passphrase) -> draft);
    }

    /** Settles a clash at a station: this decision counts. */
    static void settle(House house, String subject, EntryRef stands) {
        desk(house).settle(subject, stands, "we talked", ADA, Optional.empty());
    }

    @Override
    public void close() {
        bench.close();
        quality.close();
    }
}
