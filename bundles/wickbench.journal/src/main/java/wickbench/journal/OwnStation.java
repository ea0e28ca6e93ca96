package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.person.PersonId;

/** Finds, opens and founds the station of a home. */
final class OwnStation {
    /** Who records what no person does. */
    static final PersonId FOUNDER = new PersonId("founder");

    static final PersonId JOURNAL = new PersonId("journal");

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,31}");

    private final Disk disk;
    private final Home home;
    private final Layout layout;
    private final boolean writable;
    private final Consumer<String> notices;

    /** @param notices hears, in words, what was set aside */
    OwnStation(Disk disk, Home home, boolean writable, Consumer<String> notices) {
        this.disk = disk;
        this.home = home;
        layout = new Layout(home.folder());
        this.writable = writable;
        this.notices = notices;
    }

    /** Opens the station that the home holds, if it holds one. */
    Own open() throws IOException {
        List<StationId> found = stations();
        if (found.isEmpty()) {
            return Own.Unfounded.UNFOUNDED;
        }
        try {
            if (found.size() > 1) {
                throw Say.tampered("stations", found);
            }
            return open(layout.station(found.get(0)));
        } catch (Refusal tampered) {
            // opening refuses for nothing else
            return new Own.Tampered(found.get(0), tampered.getMessage());
        }
    }

    private List<StationId> stations() throws IOException {
        if (!Files.isDirectory(layout.stations())) {
            return List.of();
        }
        try (Stream<Path> folders = Files.list(layout.stations())) {
            return folders.filter(folder -> begun(folder) && !Files.exists(CopyMark.file(folder)))
                    .map(folder -> folder.getFileName().toString())
                    .filter(name -> NAME.matcher(name).matches())
                    .map(StationId::new)
                    .sorted()
                    .toList();
        }
    }

    /** Tells whether anything was ever kept there; a program that died while founding leaves empty files. */
    private static boolean begun(Path folder) {
        return Stream.of("entries-000000.jsonl", "checkpoints.jsonl", "checkpoint")
                .map(folder::resolve)
                .anyMatch(file -> file.toFile().length() > 0);
    }

    private Own open(StationFolder folder) throws IOException {
        Opened opened = Opening.open(folder);
        if (!writable) {
            opened.setAside().forEach(torn -> notices.accept(torn.noticeReadOnly()));
            return opened.founded()
                    .<Own>map(founded -> new Own.Open(new Station(folder, founded, opened), Optional.empty()))
                    .orElse(Own.Unfounded.UNFOUNDED);
        }
        Optional<StationKey> key = opened.founded().isPresent()
                ? Optional.of(key(folder, opened.founded().get()))
                : Optional.empty();
        for (SetAside torn : opened.setAside()) {
            torn.move(disk, folder);
            notices.accept(torn.notice(folder));
        }
        return key.isPresent()
                ? reportTorn(write(folder, opened, opened.founded().get(), key.get()), opened.setAside())
                : Own.Unfounded.UNFOUNDED;
    }

    /** Records what was set aside; a full disk is no reason not to open. */
    private Own.Open reportTorn(Own.Open open, List<SetAside> setAside) throws IOException {
        List<Draft> drafts = setAside.stream()
                .map(torn -> tornEntry(torn, open.station().folder()))
                .toList();
        try {
            // in a home made from a back-up it was the end of what was being taken back, and comes again
            if (!drafts.isEmpty() && RestoredMark.read(home.folder()).isEmpty()) {
                open.writer().orElseThrow().append(drafts, home.clock().instant());
            }
        } catch (Refusal e) {
            notices.accept(e.getMessage());
        }
        return open;
    }

    private Draft tornEntry(SetAside torn, StationFolder folder) {
        return new Draft(Draft.randomId(home.chance()), JOURNAL, SetAside.KIND, SetAside.V, torn.body(folder));
    }

    private Own.Open write(StationFolder folder, Opened opened, Founded founded, StationKey key) throws IOException {
        Station station = new Station(folder, founded, opened);
        return new Own.Open(station, Optional.of(new StationWriter(disk, station, key)));
    }

    private StationKey key(StationFolder folder, Founded founded) throws IOException {
        Path path = layout.key(folder.station());
        return storedKey(path)
                .filter(key -> key.open().fingerprint().equals(founded.key().fingerprint()))
                .orElseThrow(() -> Say.tampered("key", path, founded.key().fingerprint()));
    }

    private static Optional<StationKey> storedKey(Path path) throws IOException {
        return Files.exists(path)
                ? StationKey.parse(new String(Files.readAllBytes(path), StandardCharsets.UTF_8))
                : Optional.empty();
    }

    /** Makes key and folder and writes the first entry. */
    Own found(Founding founding) throws IOException {
        StationFolder folder = layout.station(founding.station());
        disk.makeFolder(folder.folder());
        StationKey key = newKey(layout.key(founding.station()));
        Founded founded = new Founded(founding, key.open());
        Own.Open open = write(folder, Opened.nothing(founded), founded, key);
        StationWriter writer = open.writer().orElseThrow();
        try {
            writer.append(List.of(firstEntry(founded)), home.clock().instant());
            return open;
        } catch (Refusal e) {
            writer.close();
            if (writer.broken().isPresent()) {
                return new Own.Failed(e.getMessage());
            }
            throw e;
        }
    }

    private StationKey newKey(Path path) throws IOException {
        disk.makeFolder(path.getParent());
        // a key whose first entry was never written is as good as a new one
        Optional<StationKey> stored = storedKey(path);
        StationKey key = stored.orElseGet(() -> StationKey.drawn(home.chance()));
        if (stored.isEmpty()) {
            disk.placeSecret(path, key.pem().getBytes(StandardCharsets.US_ASCII));
        }
        return key;
    }

    private Draft firstEntry(Founded founded) {
        return new Draft(Draft.randomId(home.chance()), FOUNDER, Founded.KIND, Founded.V, founded.body());
    }
}
