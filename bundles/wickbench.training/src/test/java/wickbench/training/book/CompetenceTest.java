package wickbench.training.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.training.TrainingHome.METHOD;
import static wickbench.training.TrainingHome.OP;
import static wickbench.training.TrainingHome.OTHER;
import static wickbench.training.TrainingHome.TRAINER;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Actor;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.testing.Meets;
import wickbench.training.Competence;
import wickbench.training.CompetenceState;
import wickbench.training.Due;
import wickbench.training.Lapse;
import wickbench.training.Terms;
import wickbench.training.TrainingHome;

class CompetenceTest {
    @TempDir
    private Path folder;

    private TrainingHome home;

    @BeforeEach
    void open() {
        home = new TrainingHome(folder).issued();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void an_authorisation_runs_by_the_sites_term_and_to_the_end_of_its_last_local_day() {
        home.coach.terms(new Terms(2, 50, 30), TRAINER);
        home.authorised(OP);
        assertThat(home.now(OP).until()).contains(LocalDate.parse("2026-05-01"));
        // 21:59 and 22:00 UTC are the two sides of midnight in Vienna in summer
        assertThat(at("2026-05-01T21:59:59Z").state()).isEqualTo(CompetenceState.AUTHORISED);
        Competence over = at("2026-05-01T22:00:00Z");
        assertThat(over.state()).isEqualTo(CompetenceState.LAPSED);
        assertThat(over.lapse()).contains(new Lapse(Lapse.Cause.TERM, LocalDate.parse("2026-05-02")));
    }

    @Test
    void nothing_tested_for_too_long_lapses_and_a_strip_in_between_holds_it() {
        home.coach.terms(new Terms(12, 2, 30), TRAINER);
        home.authorised(OP);
        home.after(Duration.ofDays(13)).read(OP, Optional.empty());
        assertThat(home.now(OP).untestedUntil()).contains(LocalDate.parse("2026-03-29"));
        home.after(Duration.ofDays(14));
        assertThat(home.now(OP).state()).isEqualTo(CompetenceState.AUTHORISED);
        home.after(Duration.ofDays(1));
        assertThat(home.now(OP).lapse()).contains(new Lapse(Lapse.Cause.UNTESTED, LocalDate.parse("2026-03-30")));
        // a strip afterwards wakes nothing: it takes a new authorisation
        home.read(OP, Optional.empty());
        assertThat(home.now(OP).state()).isEqualTo(CompetenceState.LAPSED);
        home.authorised(OP);
        assertThat(home.now(OP).state()).isEqualTo(CompetenceState.AUTHORISED);
    }

    @Test
    void strips_read_before_the_book_was_kept_count_too_and_so_does_the_observer_who_read() {
        home.coach.terms(new Terms(12, 2, 30), TRAINER);
        home.read(OP, Optional.empty());
        assertThat(home.now(OP).tested()).contains(LocalDate.parse("2026-03-02"));
        home.authorised(OP).after(Duration.ofDays(10)).read(OTHER, Optional.of(OP));
        assertThat(home.now(OP).tested()).contains(LocalDate.parse("2026-03-12"));
        assertThat(home.now(OTHER).tested()).isEmpty();
    }

    @Test
    void a_new_version_must_be_read_first() {
        home.authorised(OP).after(Duration.ofDays(1)).revised();
        Competence unread = home.now(OP);
        assertThat(unread.state()).isEqualTo(CompetenceState.UNREAD);
        assertThat(unread.read()).isEqualTo(1);
        assertThat(unread.version()).contains(2);
        assertThat(home.coach.acknowledge(METHOD, Actor.of(OP)).state()).isEqualTo(CompetenceState.AUTHORISED);
        assertThatThrownBy(() -> home.coach.acknowledge(METHOD, Actor.of(OP)))
                .isInstanceOfSatisfying(
                        Refusal.class, no -> assertThat(no.code()).isEqualTo("acknowledge.already"));
    }

    @Test
    void reading_a_version_makes_nobody_authorised() {
        assertThat(home.coach.acknowledge(METHOD, Actor.of(OP)).state()).isEqualTo(CompetenceState.NEVER);
    }

    @Test
    void an_authorisation_covers_the_version_in_force() {
        home.after(Duration.ofDays(1)).revised().after(Duration.ofDays(1)).authorised(OP);
        assertThat(home.now(OP).state()).isEqualTo(CompetenceState.AUTHORISED);
        assertThat(home.now(OP).read()).isEqualTo(2);
    }

    @Test
    @Meets({"21 CFR 117.4(b), (d)", "ISO/IEC 17025 6.2.2 to 6.2.6"})
    void a_suspension_holds_until_it_is_answered_whatever_the_term_says() {
        home.authorised(OP).after(Duration.ofDays(3));
        home.coach.suspend(OP, Optional.empty(), Optional.empty(), "missed faint lines", TRAINER);
        assertThat(home.now(OP).state()).isEqualTo(CompetenceState.SUSPENDED);
        refused("training.move", () -> home.authorised(OP));
        home.after(Duration.ofDays(500));
        assertThat(home.now(OP).state()).isEqualTo(CompetenceState.SUSPENDED);
        Competence restored = home.coach.restore(OP, METHOD, Optional.empty(), "drilled, round passed", TRAINER);
        assertThat(restored.state()).isEqualTo(CompetenceState.AUTHORISED);
        assertThat(restored.suspensions()).isEmpty();
        assertThat(restored.why()).contains("drilled, round passed");
    }

    @Test
    void the_answer_about_yesterday_is_yesterdays() {
        Instant before = home.clock.instant();
        home.after(Duration.ofHours(1)).authorised(OP).after(Duration.ofDays(1));
        Instant authorised = home.clock.instant();
        home.after(Duration.ofDays(1));
        home.coach.suspend(OP, Optional.of(METHOD), Optional.empty(), "x", TRAINER);
        assertThat(at(before.toString()).state()).isEqualTo(CompetenceState.NEVER);
        assertThat(at(authorised.toString()).state()).isEqualTo(CompetenceState.AUTHORISED);
        assertThat(home.now(OP).state()).isEqualTo(CompetenceState.SUSPENDED);
    }

    @Test
    void what_the_table_does_not_allow_and_what_cannot_be_is_refused_and_nothing_is_written() {
        int before = home.entries().size();
        refused("training.move", () -> home.coach.restore(OP, METHOD, Optional.empty(), "x", TRAINER));
        refused("training.move", () -> home.coach.suspend(OP, Optional.of(METHOD), Optional.empty(), "x", TRAINER));
        refused("suspend.nothing", () -> home.coach.suspend(OP, Optional.empty(), Optional.empty(), "x", TRAINER));
        refused("training.own", () -> home.authorised(TRAINER.who()));
        wrong(() -> home.coach.authorise(OP, METHOD, Optional.of(LocalDate.parse("2026-03-01")), "x", TRAINER));
        wrong(() -> home.coach.authorise(OP, METHOD, Optional.empty(), " ", TRAINER));
        wrong(() -> home.coach.suspend(
                OP, Optional.empty(), Optional.of(home.clock.instant().plusSeconds(1)), "x", TRAINER));
        assertThat(home.entries()).hasSize(before);
    }

    @Test
    void reminders_come_before_the_end_and_name_what_ends() {
        home.coach.terms(new Terms(12, 8, 30), TRAINER);
        home.authorised(OP);
        assertThat(home.records.due(home.clock.instant())).isEmpty();
        home.after(Duration.ofDays(27));
        assertThat(home.records.due(home.clock.instant()))
                .containsExactly(new Due(Due.What.TEST, LocalDate.parse("2026-04-27"), OP.value(), METHOD.value()));
        assertThat(home.records.matrix(home.clock.instant()).cells())
                .filteredOn(cell -> cell.person().equals(OP))
                .singleElement()
                .matches(cell -> home.records.matrix(home.clock.instant()).dueSoon(cell));
    }

    private Competence at(String instant) {
        return home.records.of(OP, METHOD, Instant.parse(instant));
    }

    private static void refused(String code, Runnable act) {
        assertThatThrownBy(act::run)
                .isInstanceOfSatisfying(
                        Refusal.class, no -> assertThat(no.code()).isEqualTo(code));
    }

    private static void wrong(Runnable act) {
        assertThatThrownBy(act::run).isInstanceOf(BadInput.class);
    }
}
