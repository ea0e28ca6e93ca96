package wickbench.bench.run;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.bench.run.StripState.Answers;
import wickbench.bench.run.StripState.Preparation;

/** A strip with one thing changed, and all else as it was. */
final class Changed {
    private Changed() {}

    /** How far its extract is prepared. */
    static StripState prepared(StripState strip, Preparation preparation) {
        return new StripState(
                strip.strip(),
                preparation,
                strip.started(),
                strip.undone(),
                strip.looked(),
                strip.kept(),
                strip.second(),
                strip.alone(),
                strip.lost(),
                strip.skipped(),
                strip.recorded());
    }

    /** When it was started, and the starts that were taken back. */
    static StripState started(StripState strip, Optional<Moment> at, List<Moment> undone) {
        return new StripState(
                strip.strip(),
                strip.preparation(),
                at,
                undone,
                strip.looked(),
                strip.kept(),
                strip.second(),
                strip.alone(),
                strip.lost(),
                strip.skipped(),
                strip.recorded());
    }

    /** When it was first looked at. */
    static StripState looked(StripState strip, Moment at) {
        return new StripState(
                strip.strip(),
                strip.preparation(),
                strip.started(),
                strip.undone(),
                Optional.of(at),
                strip.kept(),
                strip.second(),
                strip.alone(),
                strip.lost(),
                strip.skipped(),
                strip.recorded());
    }

    /** The first reader's answers. */
    static StripState kept(StripState strip, Answers answers) {
        return new StripState(
                strip.strip(),
                strip.preparation(),
                strip.started(),
                strip.undone(),
                strip.looked(),
                Optional.of(answers),
                strip.second(),
                strip.alone(),
                strip.lost(),
                strip.skipped(),
                strip.recorded());
    }

    /** The second reader's answers. */
    static StripState second(StripState strip, Answers answers) {
        return new StripState(
                strip.strip(),
                strip.preparation(),
                strip.started(),
                strip.undone(),
                strip.looked(),
                strip.kept(),
                Optional.of(answers),
                strip.alone(),
                strip.lost(),
                strip.skipped(),
                strip.recorded());
    }

    /** What is said of it once and for all. */
    static StripState flags(
            StripState strip, boolean alone, boolean lost, boolean skipped, Optional<UUID> recorded) {
        return new StripState(
                strip.strip(),
                strip.preparation(),
                strip.started(),
                strip.undone(),
                strip.looked(),
                strip.kept(),
                strip.second(),
                alone,
                lost,
                skipped,
                recorded);
    }
}
