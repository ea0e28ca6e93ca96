package wickbench.journal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;

/** Reads everything in a home again: this station's journal, and the copies of the others'. */
final class HomeVerifier {
    private final Layout layout;
    private final Copies copies;
    private final Bound bound;

    /** Tells how far to look at this station while more is appended. */
    @FunctionalInterface
    interface Bound {
        Verifier.Bounds of(StationFolder folder, Optional<Station> station) throws IOException;
    }

    HomeVerifier(Layout layout, Copies copies, Bound bound) {
        this.layout = layout;
        this.copies = copies;
        this.bound = bound;
    }

    Verification run(Own own, Progress progress) throws IOException {
        Verification all = own(own, progress);
        for (StationId station : copies.stations()) {
            Copy copy = copies.copy(station).orElseThrow();
            all = all.complete() ? both(all, run(copy.station().folder(), copy.bounds(), progress)) : all;
        }
        return own instanceof Own.Open open ? pinned(all, open.station()) : all;
    }

    private Verification own(Own own, Progress progress) throws IOException {
        if (own instanceof Own.Tampered tampered) {
            return with(tampered, run(layout.station(tampered.station()), Optional.empty(), progress));
        }
        return own instanceof Own.Open open
                ? run(open.station().folder(), Optional.of(open.station()), progress)
                : new Verification(0, 0, Kept.NOTHING.leaf(), List.of(), true);
    }

    private Verification run(StationFolder folder, Optional<Station> station, Progress progress) throws IOException {
        return run(folder, bound.of(folder, station), progress);
    }

    private Verification run(StationFolder folder, Verifier.Bounds bounds, Progress progress) throws IOException {
        return new Verifier(layout, folder, bounds, progress).run();
    }

    /** Adds what opening found wrong with the home, where the station alone does not show it. */
    private static Verification with(Own.Tampered tampered, Verification shown) {
        return shown.findings().isEmpty()
                ? found(shown, new Verification.Broken(tampered.station().value(), Say.TAMPERED, tampered.text()))
                : shown;
    }

    private static Verification found(Verification shown, Verification.Broken more) {
        List<Verification.Broken> findings = new ArrayList<>(shown.findings());
        findings.add(more);
        return new Verification(shown.entries(), shown.checkpoints(), shown.root(), findings, shown.complete());
    }

    private static Verification both(Verification own, Verification other) {
        List<Verification.Broken> findings = new ArrayList<>(own.findings());
        findings.addAll(other.findings());
        return new Verification(
                own.entries() + other.entries(),
                own.checkpoints() + other.checkpoints(),
                own.root(),
                findings,
                other.complete());
    }

    /** Holds the key of each copy against the one that this station's journal pinned. */
    private Verification pinned(Verification all, Station own) {
        List<Verification.Broken> broken = new ArrayList<>();
        if (!copies.stations().isEmpty() && all.holds()) {
            own.read(0, entry -> {
                Pin.of(entry)
                        .filter(pin -> copies.station(pin.station())
                                .filter(copy -> !copy.founded()
                                        .key()
                                        .fingerprint()
                                        .hex()
                                        .equals(pin.fingerprint()))
                                .isPresent())
                        .ifPresent(pin -> broken.add(new Verification.Broken(
                                pin.station().value(), "copy.key", Say.words("copy.key", pin.station()))));
                return true;
            });
        }
        return broken.isEmpty() ? all : found(all, broken.get(0));
    }
}
