package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.ledger.services.Quality.BATCH;
import static wickbench.ledger.services.Quality.HOPPER;
import static wickbench.ledger.services.Quality.NOZZLE;
import static wickbench.ledger.services.Quality.RELEASER;
import static wickbench.ledger.services.Quality.REVIEWER;
import static wickbench.ledger.services.Quality.TESTER;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.doubt.Doubt;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Quantity;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Subject;
import wickbench.testing.Meets;

/** A batch goes when nothing speaks against it, and each thing that does keeps it here. */
class ReleaseTest {
    private static final Instant LATER = Strips.START.plusSeconds(7200);

    private Quality quality;

    @BeforeEach
    void open() throws IOException {
        quality = Quality.tested();
    }

    @AfterEach
    void close() {
        quality.close();
    }

    @Test
    @Meets("ISO 22000 8.8.1")
    void a_releaser_who_read_none_of_its_strips_lets_it_go_once() {
        assertThat(quality.reasons()).isEmpty();
        quality.release(RELEASER);
        Standing standing = quality.releasing.standing(Subject.batch(BATCH));
        assertThat(standing.released()).hasSize(1);
        assertThat(standing.calledBack()).isFalse();
        assertThat(quality.refused(() -> quality.release(RELEASER))).isEqualTo("release.already");
    }

    @Test
    @Meets("EU GMP Annex 11 2")
    void nobody_else_does() {
        assertThat(quality.refused(() -> quality.release(TESTER))).isEqualTo("release.own-reading");
        assertThat(quality.refused(() -> quality.release(REVIEWER))).isEqualTo("people.role");
        assertThat(quality.refused(() -> quality.release(Quality.ADA))).isEqualTo("people.role");
    }

    @Test
    void a_planned_point_lacks_a_valid_negative() {
        quality.plan(NOZZLE, HOPPER, new Point("chute", NOZZLE.method()));
        stays("release.point-missing");
        quality.plan(NOZZLE, HOPPER);
        quality.read("S-3", HOPPER, LATER, Seen.NOT_SEEN, Seen.NOT_SEEN, Optional.empty());
        stays("release.point-invalid", "release.owed-open");
    }

    @Test
    void nothing_is_planned_or_tested() {
        quality.plan();
        stays("release.no-plan");
        assertThat(codes(Subject.batch("B-99"))).containsExactly("release.nothing-tested");
    }

    @Test
    @Meets("21 CFR 117.150(a)")
    void a_positive_holds_it_and_neither_repeat_nor_correction_nor_settling_lets_it_go() {
        UUID positive = quality.positive("S-3", HOPPER, LATER).id();
        stays("release.point-positive", "release.held", "release.owed-open");

        // the same extract once more, Negative
        quality.negative("S-3", HOPPER, LATER.plusSeconds(900));
        stays("release.point-positive", "release.held", "release.owed-open");
        // a correction recorded behind the door
        RecordedReading otherwise = Quality.judged(
                "S-3", HOPPER, LATER, Seen.SEEN, Seen.NOT_SEEN, Optional.empty(), wickbench.api.method.Route.RINSE);
        quality.site.correct(positive, otherwise);
        stays("release.point-positive", "release.held", "release.owed-open");
        // what is owed ended by word of mouth, without root cause
        quality.owed
                .open()
                .forEach(item -> quality.owed.settle(
                        item.owes(), item.step().owed(), "it will be all right", REVIEWER, Optional.empty()));
        stays("release.point-positive", "release.held");
    }

    @Test
    void after_clean_re_test_and_decision_it_goes() {
        UUID positive = quality.positive("S-3", HOPPER, LATER).id();
        quality.cleared(positive, HOPPER, LATER.plusSeconds(3600));
        stays("release.held", "release.owed-open");
        quality.decide(positive, Move.RELEASE, "worn seal", RELEASER);
        assertThat(quality.reasons()).isEmpty();
        quality.release(RELEASER);
        quality.decide(positive, Move.HOLD, REVIEWER);
        assertThat(quality.releasing.standing(Subject.batch(BATCH)).calledBack())
                .isTrue();
    }

    @Test
    void a_sign_on_an_invalid_holds_like_a_positive() {
        quality.read("S-3", HOPPER, LATER, Seen.NOT_SEEN, Seen.SEEN, Optional.empty());
        assertThat(quality.reasons()).contains("release.held");
        assertThat(quality.refused(() -> quality.release(RELEASER))).startsWith("release.");
    }

    @Test
    @Meets("ISO/IEC 17025 7.7.1")
    void a_control_failed_or_is_missing() throws IOException {
        quality.control("C-2", Seen.NOT_SEEN, LATER);
        assertThat(quality.reasons()).contains("release.control-failed", "release.owed-open");
        assertThat(quality.refused(() -> quality.release(RELEASER))).startsWith("release.");
        try (Quality without = new Quality()) {
            without.plan(NOZZLE);
            without.negative("S-1", NOZZLE, Strips.START);
            assertThat(without.reasons()).containsExactly("release.control-missing");
            assertThat(without.refused(() -> without.release(RELEASER))).isEqualTo("release.control-missing");
        }
    }

    @Test
    void a_blank_was_not_negative() {
        quality.read("K-1", NOZZLE, LATER, Seen.SEEN, Seen.SEEN, Optional.of(RunControl.BLANK));
        assertThat(quality.reasons()).contains("release.blank-failed");
    }

    @Test
    @Meets("ISO 22000 8.7")
    void a_negative_in_doubt_waits_for_its_decision() {
        quality.append(
                "lot.rejected",
                Doubt.into(Json.object(), List.of(Doubt.ofLot("lot.rejected", new LotId("A17"), Optional.empty()))));
        stays("release.point-in-doubt", "release.owed-open");
    }

    @Test
    void an_outside_laboratory_found_it() {
        quality.deciding.reported(
                new Outside(
                        "Harbour Laboratory",
                        "HL-17",
                        "F-1",
                        "hazelnut",
                        true,
                        Optional.of(Quantity.of("2.5", Unit.MG_PER_KG)),
                        Optional.of(Basis.TOTAL_PROTEIN),
                        Optional.of(BATCH),
                        List.of(),
                        Instant.parse("2026-03-05T10:00:00Z")),
                TESTER);
        stays("release.outside-detected");
    }

    @Test
    void what_a_positive_put_in_question_is_held_whatever_its_own_tests_say() {
        // on the same line since the last good result of that point: the batch of this test
        Point chute = new Point("chute", NOZZLE.method());
        quality.site.record(other(chute));
        assertThat(quality.reasons()).contains("release.held");
    }

    private static RecordedReading other(Point point) {
        Strips.Plain plain =
                Strips.Plain.negative("S-8").seen(Seen.SEEN, Seen.SEEN).at(LATER);
        return new Strips.Plain(
                        plain.sample(),
                        point.place(),
                        Optional.of(Quality.LINE),
                        Optional.of("B-8"),
                        plain.method(),
                        plain.lot(),
                        plain.operator(),
                        plain.started(),
                        plain.test(),
                        plain.control())
                .judged();
    }

    @Test
    void entries_of_other_stations_may_be_missing(@TempDir Path folder) throws IOException {
        Path share = Files.createDirectory(folder.resolve("share"));
        quality.site.journal.others().share(Optional.of(share));
        assertThat(quality.reasons()).isEmpty();
        Files.move(share, folder.resolve("gone"));
        stays("release.cut-off");
    }

    @Test
    void a_newer_program_wrote_what_is_not_understood() {
        quality.site.journal.append(List.of(new wickbench.api.journal.Draft(
                UUID.randomUUID(),
                TESTER,
                RecordedReading.KIND,
                2,
                Json.object().with("new", "thing"))));
        stays("release.unread");
    }

    @Test
    void a_line_goes_by_what_was_read_since_it_went_last() {
        Subject line = Subject.line(Quality.LINE);
        assertThat(codes(line)).isEmpty();
        quality.releasing.release(line, "clean", RELEASER, Optional.empty());
        assertThat(codes(line)).contains("release.nothing-tested", "release.point-missing");
    }

    /** The batch stays for just these reasons, whoever asks. */
    private void stays(String... codes) {
        assertThat(quality.reasons().stream().distinct()).containsExactlyInAnyOrder(codes);
        for (var who : List.of(RELEASER, TESTER)) {
            assertThat(quality.refused(() -> quality.release(who))).startsWith("release.");
        }
        assertThat(quality.refused(() -> quality.release(REVIEWER))).isEqualTo("people.role");
        assertThat(quality.refused(() -> quality.release(Quality.ADA))).isEqualTo("people.role");
    }

    private List<String> codes(Subject subject) {
        return quality.releasing.standing(subject).reasons().stream()
                .map(reason -> reason.code())
                .toList();
    }
}
