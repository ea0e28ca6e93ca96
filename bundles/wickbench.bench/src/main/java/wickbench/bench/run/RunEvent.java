package wickbench.bench.run;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;

/** What happens in a run. */
public sealed interface RunEvent {

    /** What happens to one strip. */
    sealed interface OfStrip extends RunEvent {
        int strip();
    }

    /** The run begins with these strips. */
    record Begun(UUID run, PersonId by, List<RunStrip> strips) implements RunEvent {
        public Begun {
            strips = List.copyOf(strips);
        }
    }

    /** One more strip. */
    record Added(RunStrip more) implements RunEvent {}

    /** Sample and liquid have met, and shaking begins. */
    record Shaking(int strip) implements OfStrip {}

    /** Shaking has ended. */
    record Shaken(int strip) implements OfStrip {}

    /** Liquid is in the window of the strip. */
    record Started(int strip) implements OfStrip {}

    /** The start was a mistake: there was no liquid. */
    record Undone(int strip) implements OfStrip {}

    /** The first answer to a line: the time of reading. */
    record Looked(int strip) implements OfStrip {}

    /** All lines were answered, and kept. */
    record Kept(int strip, PersonId by, Map<LineRole, Seen> lines) implements OfStrip {
        public Kept {
            lines = Map.copyOf(lines);
        }
    }

    /** A second person, who did not know the first answers, gave their own. */
    record Second(int strip, PersonId by, Map<LineRole, Seen> lines) implements OfStrip {
        public Second {
            lines = Map.copyOf(lines);
        }
    }

    /** No second person came; the first answers stand alone. */
    record NoSecond(int strip) implements OfStrip {}

    /** The strip was thrown away or lost before anybody looked at it. */
    record Lost(int strip) implements OfStrip {}

    /** The strip will not be run; only before its start. */
    record Skipped(int strip) implements OfStrip {}

    /** The reading stands in the journal under this id. */
    record Recorded(int strip, UUID reading) implements OfStrip {}

    /** Somebody or something has moved the clock on the wall. */
    record ClockMoved(Duration by) implements RunEvent {}

    /** The run was brought back after the program had ended. */
    record Resumed() implements RunEvent {}

    /** Every strip stands in the journal or was never run. */
    record Closed() implements RunEvent {}
}
