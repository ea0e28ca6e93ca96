package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.ledger.services.Quality.BATCH;
import static wickbench.ledger.services.Quality.HOPPER;
import static wickbench.ledger.services.Quality.NOZZLE;
import static wickbench.ledger.services.Quality.RELEASER;
import static wickbench.ledger.services.Quality.REVIEWER;
import static wickbench.ledger.services.Quality.TESTER;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.reading.RecordedReading;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Product;
import wickbench.ledger.acts.ProductState;
import wickbench.testing.Meets;

/** What is decided because of a result: who may, what it asks for before, what it leaves behind. */
class DecideTest {
    private static final Instant LATER = Strips.START.plusSeconds(7200);

    private Quality quality;
    private UUID good;
    private UUID positive;

    @BeforeEach
    void open() throws IOException {
        quality = new Quality();
        good = quality.negative("S-0", NOZZLE, Strips.START.minusSeconds(86_400))
                .id();
        quality.negative("S-9", HOPPER, Strips.START.minusSeconds(600));
        positive = quality.positive("S-1", NOZZLE, Strips.START).id();
    }

    @AfterEach
    void close() {
        quality.close();
    }

    @Test
    @Meets({"21 CFR 117.150(a)", "ISO 22000 8.9.2, 8.9.4, 10.1"})
    void a_hold_is_closed_after_its_re_tests_by_a_releaser_who_knows_the_cause() {
        assertThat(of().products()).extracting(Product::state).containsOnly(ProductState.HELD);
        assertThat(of().lastGood().orElseThrow().result()).isEqualTo(good);
        assertThat(of().products()).extracting(Product::name).containsExactly(BATCH);

        assertThat(quality.refused(() -> quality.decide(positive, Move.RELEASE, RELEASER)))
                .isEqualTo("decide.no-cause");
        assertThat(quality.refused(() -> quality.decide(positive, Move.RELEASE, "worn seal", RELEASER)))
                .isEqualTo("decide.owed-open");
        quality.cleared(positive, NOZZLE, LATER);
        quality.decide(positive, Move.RELEASE, "worn seal", RELEASER);

        assertThat(of().open()).isFalse();
        assertThat(of().products()).extracting(Product::state).containsOnly(ProductState.RELEASED);
        assertThat(of().cause()).contains("worn seal");
        assertThat(quality.owed.of(positive)).hasSize(3).allMatch(OwedItem::done);
        assertThat(quality.deciding.open()).isEmpty();
        // what answered the re-test is linked
        assertThat(of().owed())
                .filteredOn(item -> item.step() == Step.RE_TEST)
                .singleElement()
                .satisfies(item -> assertThat(item.answers()).isNotEmpty());
    }

    @Test
    void each_who_may_not_is_told_so() {
        quality.cleared(positive, NOZZLE, LATER);
        assertThat(quality.refused(() -> quality.decide(positive, Move.RELEASE, "cause", TESTER)))
                .isEqualTo("decide.own-reading");
        assertThat(quality.refused(() -> quality.decide(positive, Move.RELEASE, "cause", REVIEWER)))
                .isEqualTo("people.role");
        assertThat(quality.refused(() -> quality.decide(positive, Move.RELEASE, "cause", Quality.ADA)))
                .isEqualTo("people.role");
        assertThat(quality.refused(() -> quality.decide(positive, Move.DESTROY, Quality.ADA)))
                .isEqualTo("people.role");
        assertThat(quality.refused(() -> quality.decide(UUID.randomUUID(), Move.HOLD, REVIEWER)))
                .isEqualTo("decide.unknown");
    }

    @Test
    void what_the_table_does_not_allow_is_refused() {
        assertThat(quality.refused(() -> quality.decide(positive, Move.DONE, REVIEWER)))
                .isEqualTo("decide.move");
        assertThat(quality.refused(() -> quality.decide(positive, Move.HOLD, REVIEWER)))
                .isEqualTo("decide.move");
        quality.decide(positive, Move.DESTROY, REVIEWER);
        assertThat(quality.refused(() -> quality.decide(positive, Move.RELEASE, "cause", RELEASER)))
                .isEqualTo("decide.move");
        quality.decide(positive, Move.DONE, "worn seal", REVIEWER);
        assertThat(quality.refused(() -> quality.decide(positive, Move.HOLD, REVIEWER)))
                .isEqualTo("decide.move");
        assertThat(of().products()).extracting(Product::state).containsOnly(ProductState.DESTROYED);
        // the product is gone; the line still owes its clean and its tests
        assertThat(quality.owed.of(positive))
                .filteredOn(item -> !item.done())
                .extracting(OwedItem::step)
                .containsExactlyInAnyOrder(Step.RE_CLEAN, Step.RE_TEST);
    }

    @Test
    void batches_go_different_ways_and_the_hold_ends_with_the_last() {
        quality.decide(positive, Move.REWORK, REVIEWER, BATCH, "B-8");
        quality.decide(positive, Move.DONE, REVIEWER, BATCH, "B-8");
        quality.decide(positive, Move.DESTROY, REVIEWER, BATCH);
        quality.decide(positive, Move.DONE, REVIEWER, BATCH);
        assertThat(hold().done()).isFalse();
        assertThat(of().products())
                .extracting(Product::name, Product::state)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(BATCH, ProductState.DESTROYED),
                        org.assertj.core.groups.Tuple.tuple("B-8", ProductState.REWORKED));
        quality.decide(positive, Move.RELABEL, REVIEWER, "B-8");
        assertThat(quality.refused(() -> quality.decide(positive, Move.DONE, REVIEWER, "B-8")))
                .isEqualTo("decide.no-cause");
        quality.deciding.decide(
                Quality.wish(positive, Move.DONE, Optional.of("worn seal"), "B-8"), REVIEWER, Optional.empty());
        assertThat(hold().done()).isTrue();
    }

    @Test
    void what_is_ordered_is_owed_and_what_is_owed_already_is_not_ordered_twice() {
        assertThat(quality.refused(() -> quality.decide(positive, Move.RE_CLEAN, REVIEWER)))
                .isEqualTo("decide.owed-already");
        quality.decide(good, Move.RE_TEST, REVIEWER);
        quality.decide(good, Move.HOLD, REVIEWER);
        assertThat(quality.owed.of(good)).extracting(OwedItem::step).containsExactlyInAnyOrder(Step.HOLD, Step.RE_TEST);
        assertThat(quality.deciding.of(good).orElseThrow().products())
                .extracting(Product::state)
                .containsOnly(ProductState.HELD);
    }

    @Test
    void a_hold_after_a_release_is_owed_again() {
        quality.cleared(positive, NOZZLE, LATER);
        quality.decide(positive, Move.RELEASE, "worn seal", RELEASER);
        assertThat(hold().done()).isTrue();
        quality.decide(positive, Move.HOLD, REVIEWER);
        assertThat(hold().done()).isFalse();
        assertThat(quality.deciding.open())
                .extracting(each -> each.result().id())
                .containsExactly(positive);
        quality.decide(positive, Move.RELEASE, RELEASER);
        assertThat(hold().done()).isTrue();
    }

    @Test
    void allergen_in_the_product_is_not_decided_away() {
        UUID food = quality.food("F-1", Strips.START, Seen.SEEN).id();
        assertThat(quality.refused(() -> quality.decide(food, Move.RELEASE, "cause", RELEASER)))
                .isEqualTo("decide.in-product");
        quality.deciding.reported(report(true, food), TESTER);
        assertThat(quality.refused(() -> quality.decide(food, Move.RELEASE, "cause", RELEASER)))
                .isEqualTo("decide.in-product");
        quality.decide(food, Move.RELABEL, REVIEWER);
    }

    @Test
    void an_outside_report_that_found_none_is_linked_to_the_hold() {
        UUID food = quality.food("F-1", Strips.START, Seen.SEEN).id();
        Outside report = report(false, food);
        assertThat(quality.deciding.reported(report, TESTER)).isEqualTo(quality.deciding.reported(report, TESTER));
        assertThat(quality.deciding.of(food).orElseThrow().outside()).containsExactly(report);
        quality.decide(food, Move.RELEASE, "sample mixed up", RELEASER);
    }

    @Test
    void a_sign_on_an_invalid_holds_until_its_repeat_was_read() {
        UUID sign = quality.read("S-5", HOPPER, Strips.START, Seen.NOT_SEEN, Seen.SEEN, Optional.empty())
                .id();
        assertThat(quality.deciding.of(sign).orElseThrow().products())
                .extracting(Product::state)
                .containsOnly(ProductState.HELD);
        quality.negative("S-5", HOPPER, Strips.START.plusSeconds(900));
        assertThat(quality.deciding.of(sign).orElseThrow().products())
                .extracting(Product::state)
                .containsOnly(ProductState.FREE);
    }

    private static Outside report(boolean detected, UUID... results) {
        return new Outside(
                "Harbour Laboratory",
                "HL-17",
                "F-1",
                "hazelnut",
                detected,
                Optional.of(Quantity.of("2.5", Unit.MG_PER_KG)),
                Optional.of(Basis.TOTAL_PROTEIN),
                Optional.of(BATCH),
                List.of(results),
                Instant.parse("2026-03-05T10:00:00Z"));
    }

    private Case of() {
        return quality.deciding.of(positive).orElseThrow();
    }

    private OwedItem hold() {
        return quality.owed.of(positive).stream()
                .filter(item -> item.step() == Step.HOLD)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void what_the_line_makes_after_the_hold_was_ended_is_not_in_question() {
        UUID food =
                quality.food("F-1", Strips.START.plusSeconds(3600), Seen.SEEN).id();
        quality.decide(food, Move.RELABEL, "mixed up at the hopper", Quality.REVIEWER);
        quality.decide(food, Move.DONE, Quality.REVIEWER);
        quality.site.record(later());

        assertThat(quality.deciding.of(food).orElseThrow().products())
                .extracting(wickbench.ledger.acts.Product::name)
                .doesNotContain("B-9");
        assertThat(quality.deciding.of(food).orElseThrow().open()).isFalse();
    }

    /** A strip of another batch on the same line, started long after everything else here was written. */
    private static RecordedReading later() {
        RecordedReading like = Quality.judged(
                "S-99",
                Quality.NOZZLE,
                Instant.parse("2099-01-01T08:00:00Z"),
                Seen.SEEN,
                Seen.NOT_SEEN,
                Optional.empty(),
                Route.RINSE);
        return Quality.ofBatch(like, "B-9");
    }
}
