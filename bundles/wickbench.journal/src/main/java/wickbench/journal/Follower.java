package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Entry;
import wickbench.api.journal.StationId;
import wickbench.proof.Note;

/**
 * Takes in what another station has put into the shared folder: only what is whole, follows what was taken before, and is signed by
 * the key that was pinned when the station was first seen.
 *
 * <p>A part of what is signed waits, for it may still be on its way; that it does is told, for who must have seen everything cannot
 * act meanwhile. For one thread.
 */
final class Follower {
    private final Host host;
    private final StationFolder there;
    private final StationId station;
    private final ClockWatch clock = new ClockWatch();
    /** Entries that are here and were not handed on yet, since a failure came before. */
    private final List<Entry> untold = new ArrayList<>();

    private Optional<String> trouble = Optional.empty();
    private Optional<String> setBack = Optional.empty();
    private Optional<String> waits = Optional.empty();

    Follower(Host host, StationFolder there) {
        this.host = host;
        this.there = there;
        station = there.station();
    }

    StationId station() {
        return station;
    }

    /** Returns why nothing of the station is taken; empty while it is. */
    Optional<String> trouble() {
        return trouble;
    }

    /** Returns that something of the station is in the folder which is not here whole; empty while nothing is, or there is trouble. */
    Optional<String> waits() {
        return waits;
    }

    /** Returns where the station's clock was last seen to be set back in this run; its entries are taken all the same. */
    Optional<String> setBack() {
        return setBack;
    }

    /** Takes in what is new. */
    List<Entry> follow() throws IOException {
        trouble = Optional.empty();
        waits = Optional.empty();
        if (upToDate()) {
            return List.of();
        }
        Beginning first = Beginning.of(there);
        List<Entry> news = List.of();
        if (first.foreign()) {
            trouble = Optional.of(Say.words("other.damaged", station));
        } else if (first.founded().isPresent()) {
            Founded founded = first.founded().get();
            trouble = stranger(founded);
            news = trouble.isPresent() ? List.of() : take(founded);
        }
        news.forEach(entry -> setBack = clock.look(List.of(entry)).or(() -> setBack));
        if (trouble.isEmpty() && more(first.founded())) {
            waits = Optional.of(Say.words("other.waits", station));
        }
        return news;
    }

    /** Tells whether the newest checkpoint there is the one that was taken last. */
    private boolean upToDate() throws IOException {
        Optional<Copy> copy = host.copies().copy(station);
        return copy.isPresent()
                && Files.exists(there.note())
                && copy.get().station().newest().map(Seal::note).equals(Optional.of(Files.readString(there.note())));
    }

    /**
     * Tells whether something is there that is not here: what it signed last is in the folder and not taken, or not there yet.
     *
     * <p>A folder in which nothing of a station lies is none of a station.
     */
    private boolean more(Optional<Founded> founded) throws IOException {
        if (!Files.exists(there.note())) {
            return Files.exists(there.segment(0))
                    || Files.exists(there.checkpoints())
                    || Files.exists(there.folder().resolve(ShareFolder.WRITER));
        }
        long here = here();
        return Note.parse(new String(Files.readAllBytes(there.note()), StandardCharsets.UTF_8))
                .filter(note -> note.size() <= here && note.origin().equals(Origin.of(station)))
                .filter(note -> founded.filter(by -> note.signedBy(by.key())).isPresent())
                .isEmpty();
    }

    private Optional<String> stranger(Founded founded) {
        if (founded.founding().simulated()) {
            return Optional.of(Say.words("other.simulated", station));
        }
        String key = founded.key().fingerprint().hex();
        Optional<String> pinned = host.copies()
                .copy(station)
                .map(copy -> copy.station().founded().key().fingerprint().hex())
                .or(() -> host.pinned(station).map(Pin::fingerprint));
        return pinned.filter(known -> !known.equals(key)).map(known -> Say.words("other.key", station, key, known));
    }

    private List<Entry> take(Founded founded) throws IOException {
        Optional<Copy> known = known();
        Copy copy = known.isPresent() ? known.get() : begin(founded);
        if (followsOn(copy)) {
            takeFrom(copy, founded);
        } else {
            apart(copy, founded);
        }
        List<Entry> news = List.copyOf(untold);
        if (known.isEmpty()) {
            meet(copy, founded);
        }
        untold.clear();
        return news;
    }

    /** Returns the copy that is here, and takes up what reached it when the disk failed under it. */
    private Optional<Copy> known() throws IOException {
        long before = here();
        Optional<Copy> known = host.copies().sound(station);
        known.ifPresent(copy -> copy.station().read(before, untold::add));
        return known;
    }

    private long here() {
        return host.copies().station(station).map(copy -> copy.kept().size()).orElse(0L);
    }

    private Copy begin(Founded founded) throws IOException {
        untold.clear();
        return host.copies().begin(founded);
    }

    /** Keeps a copy once its first entries are here; pins the key before, so that none is kept without. */
    private void meet(Copy copy, Founded founded) throws IOException {
        if (untold.isEmpty()) {
            copy.close();
            return;
        }
        if (host.pinned(station).isEmpty()) {
            host.record(Pin.KIND, Pin.V, Pin.of(founded).body());
        }
        host.copies().keep(copy);
    }

    /** Tells whether the checkpoints there begin with those here, or are the beginning of those here. */
    private boolean followsOn(Copy copy) throws IOException {
        Path here = copy.station().folder().checkpoints();
        Ending ours = Ending.of(here, Long.MAX_VALUE);
        Ending theirs = Ending.of(there.checkpoints(), ours.whole());
        return theirs.isSame(Ending.of(here, theirs.whole()));
    }

    private void takeFrom(Copy copy, Founded founded) throws IOException {
        if (!Files.exists(there.checkpoints())) {
            return;
        }
        long from = copy.station().folder().checkpoints().toFile().length();
        try (Lines lines = new Lines(
                there.checkpoints(), Math.min(from, there.checkpoints().toFile().length()), Long.MAX_VALUE)) {
            boolean more = true;
            while (more && lines.next()) {
                more = !lines.holdsNul() && take(copy, founded, new String(lines.copy(), StandardCharsets.UTF_8));
            }
        }
    }

    /** Takes what one more checkpoint covers; false when that cannot be taken, or not yet. */
    private boolean take(Copy copy, Founded founded, String line) throws IOException {
        Optional<Seal> seal = Seal.parse(line);
        if (seal.isEmpty()) {
            trouble = Optional.of(Say.words("other.damaged", station));
            return false;
        }
        if (!seal.get().holds(founded.key(), station)) {
            trouble =
                    Optional.of(Say.words("other.signature", station, seal.get().size()));
            return false;
        }
        Stretch stretch = Stretch.read(there, copy.station(), seal.get());
        if (stretch.fits(seal.get())) {
            untold.addAll(copy.add(stretch, seal.get()));
            return true;
        }
        if (stretch.contradicts(seal.get())) {
            apart(copy, founded, seal.get());
        }
        return false;
    }

    /** Looks at a list of checkpoints that is another than the one taken so far. */
    private void apart(Copy copy, Founded founded) throws IOException {
        Optional<Seal> newest = Ending.of(there.checkpoints(), Long.MAX_VALUE)
                .line()
                .flatMap(line -> Seal.parse(new String(line, StandardCharsets.UTF_8)))
                .filter(seal -> seal.holds(founded.key(), station));
        if (newest.isPresent()) {
            apart(copy, founded, newest.get());
        } else {
            trouble = Optional.of(Say.words("other.damaged", station));
        }
    }

    private void apart(Copy copy, Founded founded, Seal seal) throws IOException {
        if (Stretch.whole(there, founded, seal)) {
            trouble = Optional.of(fork(host, there, copy.station(), seal));
        } else {
            trouble = Optional.of(Say.words("other.damaged", station));
        }
    }

    /** Keeps another history of a station as evidence, records it once, and returns what to say of it. */
    static String fork(Host host, StationFolder there, Station taken, Seal seal) throws IOException {
        StationId station = there.station();
        String name = ShareFolder.branchName(station, seal.root().hex());
        if (Fork.keep(host.disk(), there, host.layout().stations().resolve(name))) {
            host.record(Fork.KIND, Fork.V, new Fork(station, taken.newest(), seal, name).body());
        }
        return Say.words("other.forked", station, seal.size(), taken.kept().size(), name);
    }
}
