package wickbench.training.book;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.training.TrainingHome.METHOD;
import static wickbench.training.TrainingHome.OP;
import static wickbench.training.TrainingHome.OTHER;
import static wickbench.training.TrainingHome.TRAINER;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Actor;
import wickbench.api.journal.Entry;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;
import wickbench.testing.Schemas;
import wickbench.training.BenchLight;
import wickbench.training.Observation;
import wickbench.training.PanelStrip;
import wickbench.training.Paper;
import wickbench.training.PassRule;
import wickbench.training.Played;
import wickbench.training.Questions;
import wickbench.training.Rounds.Prepared;
import wickbench.training.Sight;
import wickbench.training.StripClass;
import wickbench.training.Terms;
import wickbench.training.TrainingHome;

/** Every kind of entry that this bundle writes, held against its published schema. */
class EntrySchemaTest {
    private static final Set<String> KINDS = Set.of(
            "training.terms-set",
            "training.authorised",
            "training.suspended",
            "training.restored",
            "training.acknowledged",
            "training.sight-tested",
            "training.light-measured",
            "training.observed",
            "training.questions-issued",
            "training.answered",
            "training.seen",
            "round.opened",
            "round.called",
            "round.closed",
            "round.scored");

    @TempDir
    private Path folder;

    @Test
    void every_entry_is_as_its_schema_says() throws Exception {
        Schemas schemas = Schemas.published();
        try (TrainingHome home = new TrainingHome(folder).issued()) {
            live(home);
            Set<String> kinds = new TreeSet<>();
            for (Entry entry : home.entries()) {
                if (KINDS.contains(entry.kind())) {
                    kinds.add(entry.kind());
                    assertThat(schemas.errors(
                                    entry.kind() + "-1.schema.json",
                                    entry.body().canonical()))
                            .as(entry.kind())
                            .isEmpty();
                }
            }
            assertThat(kinds).isEqualTo(new TreeSet<>(KINDS));
            assertThat(home.records.person(OP, home.clock.instant()).happenings())
                    .extracting(each -> each.entry().kind())
                    .contains("training.authorised", "training.observed", "training.answered", "round.called");
        }
    }

    /** Lets everything happen once. */
    private static void live(TrainingHome home) {
        Instant now = home.clock.instant();
        home.coach.terms(new Terms(12, 8, 30), TRAINER);
        home.authorised(OP);
        home.coach.suspend(OP, Optional.empty(), Optional.of(now.minusSeconds(60)), "missed lines", TRAINER);
        home.coach.restore(OP, METHOD, Optional.empty(), "drilled", TRAINER);
        home.coach.suspend(OP, Optional.of(METHOD), Optional.empty(), "again", TRAINER);
        home.revised().coach.acknowledge(METHOD, Actor.of(OP));
        home.coach.sight(new Sight(OP, now, Sight.Vision.DEFICIENT_QUALIFIED, "plates, bench light"), TRAINER);
        home.coach.light(new BenchLight("bench 1", now, new BigDecimal("480.5")), TRAINER);
        UUID observed = home.coach.observed(
                new Observation(
                        OP,
                        METHOD,
                        Route.SWAB_DRY,
                        now,
                        List.of(
                                new Observation.Step("warms the kit up", Observation.Mark.DONE),
                                new Observation.Step("shakes for a minute", Observation.Mark.PROMPTED)),
                        "nervous"),
                TRAINER);
        home.coach.countersign(observed, Actor.of(OP));
        questions(home);
        rounds(home);
    }

    private static void questions(TrainingHome home) {
        home.coach.issue(
                new Questions(
                        "lines",
                        List.of(
                                new Questions.Question("q1", "No control line is", List.of("Negative", "Invalid"), 2),
                                new Questions.Question("q2", "A faint line is", List.of("seen", "not seen"), 1)),
                        1),
                TRAINER);
        Paper paper = home.coach.paper("lines");
        home.coach.answered(paper, Map.of("q1", 1, "q2", 1), Actor.of(OP));
    }

    private static void rounds(TrainingHome home) {
        var design = Played.design(1, 1, 1, 1, 1, new PassRule(0, 0, 0, 0, 0));
        play(home, home.rounds.open(Played.plan("r-1", design, List.of(OP, OTHER), List.of()), TRAINER), OTHER);
        List<PanelStrip> panel = List.of(
                new PanelStrip(
                        "a",
                        StripClass.NEAR_LIMIT,
                        Optional.of(true),
                        Optional.of(home.photograph(1)),
                        Optional.of(new java.math.BigDecimal("2.5"))),
                new PanelStrip("b", StripClass.BLANK, Optional.empty(), Optional.empty(), Optional.empty()));
        var two = Played.design(1, 1, 0, 0, 0, new PassRule(0, 0, 0, 0, 0));
        play(home, home.rounds.open(Played.plan("r-2", two, List.of(OP, OTHER), panel), TRAINER), OTHER);
    }

    private static void play(TrainingHome home, Prepared prepared, PersonId ill) {
        Instant started = home.clock.instant();
        home.after(Duration.ofMinutes(20));
        for (PersonId who : prepared.round().plan().callers().stream()
                .filter(each -> !each.equals(ill))
                .collect(Collectors.toList())) {
            home.rounds.call(
                    prepared.round().id(),
                    who,
                    Played.calls(prepared.round(), prepared.key(), started, strip -> true),
                    Optional.of("sheet.csv"),
                    Actor.of(who));
        }
        home.rounds.close(prepared.round().id(), List.of(ill), Optional.of("ill"), TRAINER);
        home.rounds.score(prepared.round().id(), TRAINER);
    }
}
