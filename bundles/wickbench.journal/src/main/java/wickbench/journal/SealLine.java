package wickbench.journal;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import wickbench.api.journal.StationId;
import wickbench.proof.OpenKey;

/**
 * A line of the list of checkpoints, read and its signature checked once, by whoever comes first: a thread beside the walk over the
 * entries, or the walk when it gets there.
 */
final class SealLine implements Runnable {
    private final long number;
    private final byte[] bytes;
    private final Optional<OpenKey> key;
    private final StationId station;
    private volatile boolean begun;
    private volatile Optional<Read> read = Optional.empty();

    /**
     * What a line says.
     *
     * @param seal empty when it is no checkpoint
     * @param signed false when the station's key did not sign it; true where that key is not known
     */
    record Read(Optional<Seal> seal, boolean signed) {}

    /** @param number counted from 1 */
    SealLine(long number, byte[] bytes, Optional<OpenKey> key, StationId station) {
        this.number = number;
        this.bytes = bytes;
        this.key = key;
        this.station = station;
    }

    long number() {
        return number;
    }

    int length() {
        return bytes.length;
    }

    @Override
    public void run() {
        read();
    }

    synchronized Read read() {
        begun = true;
        Read known = read.orElseGet(this::fresh);
        read = Optional.of(known);
        return known;
    }

    /** Tells whether somebody is reading it just now, so that whoever wants it would wait. */
    boolean inHand() {
        return begun && read.isEmpty();
    }

    private Read fresh() {
        Optional<Seal> seal = Seal.parse(new String(bytes, StandardCharsets.UTF_8));
        boolean wrong = key.isPresent()
                && seal.filter(s -> !s.holds(key.get(), station)).isPresent();
        return new Read(seal, !wrong);
    }
}
