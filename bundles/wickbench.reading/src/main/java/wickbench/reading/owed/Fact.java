package wickbench.reading.owed;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.doubt.Doubt;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.profile.ControlRule;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Visual;

/** Something that happened, as far as it bears on what is owed. */
public sealed interface Fact {

    /** Returns the id of the entry that says so. */
    UUID id();

    /** Returns when it happened. */
    Instant at();

    /**
     * A strip was read.
     *
     * @param spot where the sample was taken
     * @param dilution how many times thinner the extract was made
     * @param owed what its verdict proposes
     */
    record Tested(
            UUID id,
            Instant at,
            String sample,
            Spot spot,
            MethodId method,
            LotId lot,
            PersonId operator,
            BigDecimal dilution,
            Optional<RunControl> control,
            Optional<Reason> reason,
            Outcome outcome,
            boolean sign,
            Set<Owed> owed)
            implements Fact {
        public Tested {
            owed = Set.copyOf(owed);
        }

        boolean valid() {
            return outcome != Outcome.INVALID;
        }

        boolean inDoubt(Doubt doubt) {
            return doubt.touches(lot, method, operator, at);
        }

        boolean asThin(Tested other) {
            return dilution.compareTo(other.dilution) == 0;
        }

        /** Tells whether its Negative says as much as one of the other would, or more. */
        boolean noThinnerThan(Tested other) {
            return dilution.compareTo(other.dilution) <= 0;
        }
    }

    /** A place was cleaned. */
    record Cleaned(UUID id, Instant at, Spot spot) implements Fact {}

    /** A place was looked at. */
    record Looked(UUID id, Instant at, Spot spot, Visual result) implements Fact {}

    /** The neighbours of a place were named. */
    record Named(UUID id, Instant at, UUID reading, List<String> points) implements Fact {
        public Named {
            points = List.copyOf(points);
        }
    }

    /**
     * Something owed was ended by decision.
     *
     * @param about of results in doubt: the doubts that were decided on, or the results where {@code owes} is the doubt
     */
    record Decided(UUID id, Instant at, UUID owes, Owed owed, List<UUID> about) implements Fact {
        public Decided {
            about = List.copyOf(about);
        }
    }

    /** Results were put in doubt; one entry may hold several. */
    record Doubted(UUID id, Instant at, Doubt doubt) implements Fact {}

    /**
     * Doubts touch no strip that was started later.
     *
     * @param at from when on
     * @param doubts the entries that hold them
     */
    record Trusted(UUID id, Instant at, List<UUID> doubts) implements Fact {
        public Trusted {
            doubts = List.copyOf(doubts);
        }
    }

    /**
     * From now on the site asks for these run controls.
     *
     * @param zone by which its days are told
     */
    record Ruled(UUID id, Instant at, ZoneId zone, ControlRule controls) implements Fact {}

    /** A run was finished; {@code id} is the run's. */
    record Ran(UUID id, Instant at, List<RanStrip> strips) implements Fact {
        public Ran {
            strips = List.copyOf(strips);
        }
    }

    /**
     * A strip of a run.
     *
     * @param reading the entry of its reading
     * @param cleaned when the clean ended after which its sample was taken, if that was said
     */
    record RanStrip(UUID reading, Optional<Instant> cleaned) {}

    /**
     * A place with its line.
     *
     * @param place empty when not stated
     */
    record Spot(String place, Optional<String> line) {
        boolean stated() {
            return !place.isBlank();
        }

        boolean same(Spot other) {
            return stated() && place.equals(other.place);
        }

        /** Tells whether a clean of this spot cleaned another: the same place, or the line that it stands on. */
        boolean covers(Spot other) {
            return same(other) || stated() && other.line.filter(place::equals).isPresent();
        }
    }
}
