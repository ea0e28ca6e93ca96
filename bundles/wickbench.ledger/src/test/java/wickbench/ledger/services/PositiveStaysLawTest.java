package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.ledger.services.Quality.HOPPER;
import static wickbench.ledger.services.Quality.RELEASER;
import static wickbench.ledger.services.Quality.REVIEWER;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import wickbench.api.check.Refusal;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.reading.RecordedReading;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Move;
import wickbench.testing.Meets;

/** Whatever people say, sign, decide or read again of a Positive, it stays one, and its batch does not go. */
class PositiveStaysLawTest {
    private static final Instant AT = Strips.START.plusSeconds(7200);

    private enum What {
        CORRECT,
        REPEAT,
        SETTLE,
        REVIEW,
        DECIDE
    }

    /** Something that somebody tries; what is refused is refused. */
    record Tried(What what, Seen test, Move move) {}

    @Provide
    Arbitrary<List<Tried>> tries() {
        return Combinators.combine(
                        Arbitraries.of(What.values()),
                        Arbitraries.of(Seen.NOT_SEEN, Seen.NOT_SEEN, Seen.DAMAGED, Seen.FAINT),
                        Arbitraries.of(Move.values()))
                .as(Tried::new)
                .list()
                .ofMinSize(4)
                .ofMaxSize(12);
    }

    @Property(tries = 12)
    @Meets({"21 CFR 117.150(a)", "ISO 22000 8.9.2, 8.9.4, 10.1"})
    void nothing_turns_it_into_a_negative(@ForAll("tries") List<Tried> tries) throws IOException {
        try (Quality quality = Quality.tested()) {
            UUID positive = quality.positive("S-3", HOPPER, AT).id();
            int step = 0;
            for (Tried tried : tries) {
                step++;
                Instant now = AT.plusSeconds(600L * step);
                try {
                    perform(quality, positive, tried, now);
                } catch (Refusal refused) {
                    assertThat(refused.code()).isNotBlank();
                }
                ResultRow row =
                        quality.site.results.find(positive).orElseThrow().row();
                assertThat(row.held()).as("held after %s", tried).isTrue();
                assertThat(row.outcome().positive())
                        .as("positive after %s", tried)
                        .isTrue();
                assertThat(quality.refused(() -> quality.release(RELEASER)))
                        .as("release after %s", tried)
                        .startsWith("release.");
            }
        }
    }

    private static void perform(Quality quality, UUID positive, Tried tried, Instant now) {
        switch (tried.what()) {
            // behind the door, which refuses it: as another station's program might have written it
            case CORRECT -> quality.site.correct(positive, said(tried.test(), AT));
            case REPEAT -> quality.site.record(said(tried.test(), now));
            case SETTLE ->
                quality.owed.open().stream()
                        .findFirst()
                        .ifPresent(item -> quality.owed.settle(
                                item.owes(), item.step().owed(), "it will be all right", REVIEWER, Optional.empty()));
            case REVIEW -> quality.reviewing.review(List.of(positive), Optional.empty(), REVIEWER, Optional.empty());
            case DECIDE -> quality.decide(positive, tried.move(), "worn seal", RELEASER);
            default -> throw new IllegalStateException(tried.toString());
        }
    }

    private static RecordedReading said(Seen test, Instant at) {
        return Quality.judged("S-3", HOPPER, at, Seen.SEEN, test, Optional.empty(), Route.RINSE);
    }
}
