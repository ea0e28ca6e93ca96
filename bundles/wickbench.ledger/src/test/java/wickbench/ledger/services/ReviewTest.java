package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wickbench.api.journal.Entry;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Review;
import wickbench.ledger.services.Strips.Plain;
import wickbench.testing.Meets;

/** Somebody else looks over what was read. */
class ReviewTest {
    private Quality quality;
    private Entry first;
    private Entry second;

    @BeforeEach
    void open() throws IOException {
        quality = new Quality();
        first = quality.site.record(Plain.negative("S-1").judged());
        second = quality.site.record(Plain.negative("S-2").judged());
    }

    @AfterEach
    void close() {
        quality.close();
    }

    @Test
    @Meets("21 CFR 117.165(a)(4)(i)")
    void many_are_reviewed_at_once_by_one_entry() {
        long before = quality.entries();
        review(Quality.REVIEWER, first.id(), second.id());
        assertThat(quality.entries()).isEqualTo(before + 1);
        assertThat(waiting()).isZero();
        assertThat(quality.site.results.find(first.id()).orElseThrow().row().reviewed())
                .map(Review::by)
                .contains(Quality.REVIEWER);

        assertThat(quality.reviewing.review(
                        List.of(first.id(), second.id()), Optional.empty(), Quality.REVIEWER, Optional.empty()))
                .isEmpty();
        assertThat(quality.entries()).isEqualTo(before + 1);
    }

    @Test
    void nobody_reviews_what_they_read_nor_what_they_corrected_and_all_or_none_is_reviewed() {
        Entry own = quality.site.record(new Plain(
                        "S-3",
                        "hopper",
                        Optional.of("L1"),
                        Optional.empty(),
                        "hazelnut-rinse",
                        "A17",
                        Quality.REVIEWER,
                        Optional.of(Strips.START),
                        Seen.NOT_SEEN,
                        Seen.SEEN)
                .judged());
        assertThat(quality.refused(() -> review(Quality.TESTER, first.id()))).isEqualTo("review.own-reading");
        assertThat(quality.refused(() -> review(Quality.REVIEWER, first.id(), own.id())))
                .isEqualTo("review.own-reading");
        quality.site.correct(second.id(), Plain.negative("S-2b").judged());
        quality.site.correct(first.id(), Plain.negative("S-1b").judged());
        assertThat(quality.site.results.find(second.id()).orElseThrow().history())
                .hasSize(2);
        assertThat(waiting()).isEqualTo(3);
        assertThat(quality.refused(() -> review(Quality.REVIEWER, UUID.randomUUID())))
                .isEqualTo("review.unknown");
    }

    @Test
    void others_may_not() {
        assertThat(quality.refused(() -> review(Quality.ADA, first.id()))).isEqualTo("people.role");
        assertThat(quality.refused(() -> review(Quality.RELEASER, first.id()))).isEqualTo("people.role");
    }

    @Test
    @Meets("ISO/IEC 17025 7.5.2")
    void what_is_corrected_afterwards_waits_again() {
        review(Quality.REVIEWER, first.id(), second.id());
        quality.site.correct(
                first.id(), Plain.negative("S-1").seen(Seen.SEEN, Seen.SEEN).judged());
        assertThat(waiting()).isEqualTo(1);
        assertThat(quality.site.results.find(first.id()).orElseThrow().row().reviewed())
                .isEmpty();
    }

    @Test
    void an_old_result_is_not_late_because_it_is_corrected_but_stays_late_when_nobody_ever_reviewed_it() {
        review(Quality.REVIEWER, first.id());
        Entry corrected =
                quality.site.correct(first.id(), Plain.negative("S-1b").judged());
        quality.site.correct(second.id(), Plain.negative("S-2b").judged());
        assertThat(quality.site.results.unreviewedBefore(corrected.at())).isEqualTo(1);
        assertThat(row(first).waits()).isEqualTo(corrected.at());
        assertThat(row(second).waits()).isEqualTo(second.at());
        assertThat(quality.site.results.unreviewedBefore(corrected.at().plusMillis(1)))
                .isEqualTo(2);
    }

    private ResultRow row(Entry recorded) {
        return quality.site.results.find(recorded.id()).orElseThrow().row();
    }

    @Test
    void a_review_is_late_on_the_eighth_working_day() {
        assertThat(quality.reviewing.waiting().late()).isZero();
        assertThat(quality.site.results.unreviewedBefore(first.at().plusSeconds(60)))
                .isEqualTo(2);
        assertThat(quality.site.results.unreviewedBefore(first.at())).isZero();
    }

    private void review(PersonId by, UUID... results) {
        quality.reviewing.review(List.of(results), Optional.empty(), by, Optional.empty());
    }

    private long waiting() {
        assertThat(quality.reviewing.waiting().all())
                .isEqualTo(quality.site.results.count(Filter.ALL.onlyUnreviewed(true)));
        return quality.reviewing.waiting().all();
    }
}
