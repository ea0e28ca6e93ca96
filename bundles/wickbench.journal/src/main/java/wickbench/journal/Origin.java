package wickbench.journal;

import java.util.Optional;
import wickbench.api.journal.StationId;

/** What a station calls itself in its checkpoints. */
final class Origin {
    /** No address anybody could own (RFC 2606 §2); it makes the origin look like what C2SP asks for. */
    private static final String PREFIX = "wickbench.invalid/";

    private Origin() {}

    static String of(StationId station) {
        return PREFIX + station;
    }

    /** Returns whose origin this is; empty when it is none of ours. */
    static Optional<StationId> station(String origin) {
        try {
            return origin.startsWith(PREFIX)
                    ? Optional.of(new StationId(origin.substring(PREFIX.length())))
                    : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
