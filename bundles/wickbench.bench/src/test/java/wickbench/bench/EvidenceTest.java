package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.bench.BenchHome.WRITER;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Gate;
import wickbench.api.gate.Question;
import wickbench.api.gate.Surfaces;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Route;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Severity;
import wickbench.bench.evidence.Verification;
import wickbench.bench.verify.EvidenceGate;
import wickbench.bench.verify.PaperDesk;
import wickbench.testing.HeardTerminal;

/** What a method was verified for, what shows it, and what the gate says where it was not. */
class EvidenceTest {
    private static final MethodId NUT = new MethodId("nut-swab");
    private static final Surfaces PLANT = (place, at) -> switch (place) {
        case "guide rail" -> Optional.of("stainless steel");
        case "belt" -> Optional.of("rubber");
        default -> Optional.empty();
    };

    @TempDir
    private Path folder;

    private BenchHome home;
    private EvidenceGate gate;

    @BeforeEach
    void open() {
        home = new BenchHome(folder).withMethods();
        gate = new EvidenceGate(home.home, home.index, home.journal, home.shelf, Optional.of(PLANT));
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void a_method_that_was_shown_to_work_for_nothing_is_minded_and_stops_nobody() {
        Answer.Refused said = (Answer.Refused) ask(1, Instant.MAX);

        assertThat(said.reasons()).extracting(Answer.Reason::code).containsExactly("method.not-verified");
        assertThat(said.reasons()).extracting(Answer.Reason::measured).containsExactly("nut-swab v1");
    }

    @Test
    void what_shows_it_clears_the_gate_from_then_until_it_ends_and_for_that_version_only() {
        Instant before = last().at();
        EntryRef kept = kept();
        EntryRef verified = home.verifications.verify(what(List.of(kept), Optional.empty()), WRITER, Optional.empty());
        Instant from = last().at();

        assertThat(ask(1, from))
                .isEqualTo(new Answer.Cleared(
                        "evidence",
                        java.util.Map.of("verified_for", "steel, foam", "not_compared", "food, surface, cleaner")));
        assertThat(ask(1, before.minusMillis(1))).isInstanceOf(Answer.Refused.class);

        home.verifications.end(verified, "another foam", WRITER, Optional.empty());
        assertThat(ask(1, last().at())).isInstanceOf(Answer.Refused.class);
        assertThat(home.verifications.of(NUT).get(0).ended().orElseThrow().reason())
                .isEqualTo("another foam");
        assertThatThrownBy(() -> home.verifications.end(verified, "again", WRITER, Optional.empty()))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void the_surface_of_a_swab_is_held_against_what_the_method_was_verified_for() {
        home.verifications.verify(what(List.of(kept()), Optional.empty()), WRITER, Optional.empty());

        assertThat(swabbed("guide rail", Route.SWAB_WET))
                .isEqualTo(new Answer.Cleared(
                        "evidence",
                        java.util.Map.of(
                                "verified_for", "steel, foam",
                                "surface", "stainless steel",
                                "not_compared", "food, cleaner")));
        Answer.Refused elsewhere = (Answer.Refused) swabbed("belt", Route.SWAB_DRY);
        assertThat(elsewhere.reasons())
                .containsExactly(new Answer.Reason("method.not-verified-here", "rubber", "steel, foam"));
        assertThat(elsewhere.facts()).containsEntry("not_compared", "food, cleaner");
        // what is not stated, and what is no swab, is not compared, and the entry says so
        assertThat(swabbed("somewhere", Route.SWAB_DRY)).isInstanceOf(Answer.Cleared.class);
        assertThat(((Answer.Cleared) swabbed("belt", Route.RINSE)).facts())
                .containsEntry("not_compared", "food, surface, cleaner");
    }

    private Answer swabbed(String place, Route route) {
        return gate.ask(new Question(
                ref(1),
                route,
                new LotId("L1"),
                WRITER,
                Optional.empty(),
                false,
                last().at().plusSeconds(60),
                Optional.of(place)));
    }

    @Test
    void a_method_that_is_only_tried_out_from_a_file_is_not_spoken_of() {
        assertThat(ask(2, Instant.MAX)).isInstanceOf(Answer.Cleared.class);
    }

    @Test
    void it_is_refused_for_nothing_by_nothing_by_what_shows_nothing_and_for_what_was_never_issued() {
        EntryRef issued = last().ref();

        assertThatThrownBy(() -> home.verifications.verify(
                        new Verification(
                                ref(1),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                List.of(),
                                Optional.of("said so")),
                        WRITER,
                        Optional.empty()))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("expected a food, a surface or a cleaner");
        assertThatThrownBy(() -> home.verifications.verify(what(List.of(), Optional.empty()), WRITER, Optional.empty()))
                .hasMessageContaining("expected an entry that shows it");
        assertThatThrownBy(() ->
                        home.verifications.verify(what(List.of(issued), Optional.empty()), WRITER, Optional.empty()))
                .hasMessageContaining("is no kept sum and no attached file");
        assertThatThrownBy(() -> home.verifications.verify(
                        new Verification(
                                ref(2),
                                Optional.of("bread"),
                                Optional.empty(),
                                Optional.empty(),
                                List.of(),
                                Optional.of("report")),
                        WRITER,
                        Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessage("nut-swab v2 was never issued here, so it cannot be verified.");
        assertThat(home.verifications.of(NUT)).isEmpty();
    }

    /** As at the bench: the start is not refused, and a Negative stands with the caution. */
    @Test
    void a_reading_by_it_carries_the_caution_and_stands() {
        Gate late = new Gate() {
            @Override
            public String neighbour() {
                return "evidence";
            }

            @Override
            public Answer ask(Question question) {
                return gate.ask(question);
            }
        };
        home.close();
        home = new BenchHome(folder, late);
        gate = new EvidenceGate(home.home, home.index, home.journal, home.shelf, Optional.of(PLANT));

        List<RecordedReading> judged =
                home.door.judge(Sheets.read(Sheets.HEADER + Sheets.GOOD_ROW).orRefuse());

        assertThat(judged.get(0).verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
        assertThat(judged.get(0).verdict().findings())
                .filteredOn(finding -> finding.rule().equals("method.not-verified"))
                .extracting(Finding::severity)
                .containsExactly(Severity.CAUTION);
    }

    @Test
    void by_commands() {
        HeardTerminal person = HeardTerminal.of(WRITER, false);
        MethodCommand command = new MethodCommand(
                home.shelf, home.verifications, new PaperDesk(home.shelf, home.verifications, List.of()));

        assertThat(run(command, person, "verify", "nut-swab", "--surface", "steel", "--evidence", kept().toString()))
                .isZero();
        String entry = last().ref().toString();
        assertThat(run(command, person, "evidence", "nut-swab")).isZero();
        assertThat(person.lines())
                .anyMatch(line -> line.startsWith(entry) && line.contains("steel") && line.endsWith("holds"));
        assertThat(run(command, person, "lapse", entry, "--reason", "new steel"))
                .isZero();
        person.lines().clear();
        assertThat(run(command, person, "evidence", "nut-swab")).isZero();
        assertThat(person.lines()).anyMatch(line -> line.endsWith(": new steel"));
    }

    private static int run(MethodCommand command, HeardTerminal person, String... arguments) {
        return new CommandLine(command.commands(person)).execute(arguments);
    }

    private Answer ask(int version, Instant at) {
        return gate.ask(new Question(
                ref(version),
                Route.SWAB_DRY,
                new LotId("L1"),
                WRITER,
                Optional.empty(),
                false,
                at.equals(Instant.MAX) ? last().at().plusSeconds(60) : at));
    }

    private static MethodRef ref(int version) {
        return new MethodRef(NUT, version);
    }

    private static Verification what(List<EntryRef> evidence, Optional<String> remark) {
        return new Verification(ref(1), Optional.empty(), Optional.of("steel"), Optional.of("foam"), evidence, remark);
    }

    /** A sum as another bundle keeps it; the bench looks at its kind only. */
    private EntryRef kept() {
        Json.Obj body = Json.object().with("sum", "detection");
        return home.journal
                .append(List.of(new Draft(Draft.contentId("figure.kept", body), WRITER, "figure.kept", 1, body)))
                .get(0)
                .ref();
    }

    private Entry last() {
        Entry[] last = new Entry[1];
        home.journal.read(home.journal.stations().get(0), 0, entry -> {
            last[0] = entry;
            return true;
        });
        return last[0];
    }
}
