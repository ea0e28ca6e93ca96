package wickbench.training.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static wickbench.training.Played.EXPERT;
import static wickbench.training.Played.EXPERT_2;
import static wickbench.training.TrainingHome.OP;
import static wickbench.training.TrainingHome.OTHER;
import static wickbench.training.TrainingHome.TRAINER;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Actor;
import wickbench.api.chart.Series;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.api.report.Section;
import wickbench.testing.Meets;
import wickbench.training.Call;
import wickbench.training.Compared;
import wickbench.training.Design;
import wickbench.training.PanelStrip;
import wickbench.training.PassRule;
import wickbench.training.Played;
import wickbench.training.ReaderScore;
import wickbench.training.ReaderScore.Topic;
import wickbench.training.Round;
import wickbench.training.RoundKey;
import wickbench.training.RoundPlan;
import wickbench.training.Rounds.Prepared;
import wickbench.training.StripClass;
import wickbench.training.TrainingHome;

class RoundTest {
    private static final Design DESIGN = Played.design(4, 6, 2, 1, 1, new PassRule(1, 0, 0, 0, 1));

    @TempDir
    private Path folder;

    private TrainingHome home;
    private Prepared prepared;

    @BeforeEach
    void open() {
        home = new TrainingHome(folder);
        prepared = home.rounds.open(Played.plan("spring", DESIGN, List.of(OP, OTHER), List.of()), TRAINER);
    }

    @AfterEach
    void close() {
        home.close();
    }

    private RoundKey key() {
        return prepared.key();
    }

    /** Everybody calls: experts see the near-limit lines of the first four only, the second reader misses two of those. */
    private void everybodyCalls() {
        Instant started = home.clock.instant();
        home.after(Duration.ofMinutes(20));
        List<String> lines = key().strips().stream()
                .filter(strip -> strip.kind() == StripClass.NEAR_LIMIT)
                .map(RoundKey.Sealed::code)
                .limit(4)
                .toList();
        for (PersonId who : List.of(EXPERT, EXPERT_2, OP)) {
            call(who, Played.calls(prepared.round(), key(), started, strip -> lines.contains(strip.code())));
        }
        List<String> seen = lines.subList(0, 2);
        call(OTHER, Played.calls(prepared.round(), key(), started, strip -> seen.contains(strip.code())));
    }

    private Round call(PersonId who, List<Call> calls) {
        return home.rounds.call("spring", who, calls, Optional.empty(), Actor.of(who));
    }

    @Test
    void the_key_is_sealed_before_the_first_call_and_opened_unchanged_after_the_last() {
        Entry opened = entry("round.opened");
        assertThat(opened.body().canonical())
                .doesNotContain("near-limit-1")
                .contains(key().commitment().hex());
        assertThat(home.rounds.find("spring").orElseThrow().key()).isEmpty();
        everybodyCalls();
        Round closed = home.rounds.close("spring", List.of(), Optional.empty(), TRAINER);
        assertThat(closed.keyHolds()).contains(true);
        // what anybody can do with a line of the journal and a SHA-256
        Json key = entry("round.closed").body().get("key").orElseThrow();
        assertThat(entry("round.opened").body().get("commitment"))
                .contains(new Json.Text(Hash.ofContent(key.canonical()).hex()));
    }

    @Test
    void codes_and_order_are_drawn_anew_each_time() {
        Prepared other = home.rounds.open(Played.plan("summer", DESIGN, List.of(OP), List.of()), TRAINER);
        assertThat(other.round().codes())
                .doesNotContainAnyElementsOf(prepared.round().codes());
        assertThat(other.key().strips().stream().map(RoundKey.Sealed::kind))
                .isNotEqualTo(key().strips().stream().map(RoundKey.Sealed::kind).toList());
        assertThat(other.key().nonce()).isNotEqualTo(key().nonce());
    }

    @Test
    @Meets("ISO/IEC 17025 6.2.2 to 6.2.6")
    void a_round_is_scored_by_the_line_that_experts_saw_and_not_by_the_dose() {
        everybodyCalls();
        home.rounds.close("spring", List.of(), Optional.empty(), TRAINER);
        Round scored = home.rounds.score("spring", TRAINER);
        ReaderScore good = scored.scoreOf(OP).orElseThrow();
        assertThat(good.passed()).isTrue();
        assertThat(tally(good, Topic.NEAR)).isEqualTo("4/4");
        assertThat(tally(good, Topic.WITHOUT)).isEqualTo("6/6");
        assertThat(tally(good, Topic.CLEAR)).isEqualTo("3/3");
        assertThat(tally(good, Topic.INVALID)).isEqualTo("1/1");
        assertThat(good.kappa()).hasValueSatisfying(kappa -> assertThat(kappa).isEqualTo(1));
        ReaderScore poor = scored.scoreOf(OTHER).orElseThrow();
        assertThat(poor.passed()).isFalse();
        assertThat(poor.failures()).containsExactly(new ReaderScore.Failure(Topic.NEAR, 2, 1));
        assertThat(poor.dPrime().orElseThrow()).isLessThan(good.dPrime().orElseThrow());
    }

    @Test
    void the_operator_signs_that_they_have_seen_their_score_and_nobody_elses() {
        everybodyCalls();
        home.rounds.close("spring", List.of(), Optional.empty(), TRAINER);
        Round scored = home.rounds.score("spring", TRAINER);
        home.coach.countersign(scored.scored().orElseThrow(), Actor.of(OP));
        assertThat(home.rounds.find("spring").orElseThrow().seen()).containsExactly(OP);
        refused("seen.already", () -> home.coach.countersign(scored.scored().orElseThrow(), Actor.of(OP)));
        refused("seen.other", () -> home.coach.countersign(scored.scored().orElseThrow(), Actor.of(EXPERT)));
    }

    @Test
    void a_near_limit_strip_on_which_the_experts_differ_is_nobodys_mistake() {
        Instant started = home.clock.instant();
        home.after(Duration.ofMinutes(20));
        call(EXPERT, Played.calls(prepared.round(), key(), started, strip -> true));
        call(EXPERT_2, Played.calls(prepared.round(), key(), started, strip -> false));
        call(OP, Played.calls(prepared.round(), key(), started, strip -> true));
        call(OTHER, Played.calls(prepared.round(), key(), started, strip -> false));
        home.rounds.close("spring", List.of(), Optional.empty(), TRAINER);
        assertThat(home.rounds.agreement("spring").orElseThrow().disputed()).hasSize(6);
        Round scored = home.rounds.score("spring", TRAINER);
        assertThat(scored.scores())
                .allMatch(ReaderScore::passed)
                .allMatch(score -> score.of(Topic.NEAR).isEmpty());
    }

    @Test
    void the_time_of_reading_is_judged_too() {
        Instant started = home.clock.instant();
        home.after(Duration.ofMinutes(20));
        call(
                OP,
                key().strips().stream()
                        .map(strip -> Played.call(prepared.round(), strip, false, started, Duration.ofSeconds(361)))
                        .toList());
        for (PersonId who : List.of(EXPERT, EXPERT_2)) {
            call(who, Played.calls(prepared.round(), key(), started, strip -> false));
        }
        home.rounds.close("spring", List.of(OTHER), Optional.of("ill that day"), TRAINER);
        Round scored = home.rounds.score("spring", TRAINER);
        ReaderScore late = scored.scoreOf(OP).orElseThrow();
        assertThat(late.inside()).isZero();
        assertThat(late.failures()).contains(new ReaderScore.Failure(Topic.WINDOW, 14, 1));
        assertThat(scored.scoreOf(OTHER)).isEmpty();
    }

    @Test
    void what_cannot_be_is_refused_with_the_reason_and_nothing_is_written() {
        Instant started = home.clock.instant();
        home.after(Duration.ofMinutes(20));
        List<Call> calls = Played.calls(prepared.round(), key(), started, strip -> true);
        Call first = calls.get(0);
        call(OP, List.of(first));
        int before = home.entries().size();
        refused("round.called-twice", () -> call(OP, List.of(first)));
        wrong(
                "no strip of the round spring",
                () -> call(
                        OP, List.of(new Call("AAAA", first.strip(), first.outcome(), first.started(), first.read()))));
        wrong("called twice here", () -> call(OTHER, List.of(first, first)));
        refused("round.not-reader", () -> call(new PersonId("op-99"), List.of(calls.get(1))));
        refused("round.key-early", () -> home.rounds.close("spring", List.of(), Optional.empty(), TRAINER));
        List<PersonId> all = List.of(OP, OTHER, EXPERT, EXPERT_2);
        wrong("expected a reason", () -> home.rounds.close("spring", all, Optional.empty(), TRAINER));
        refused("round.no-experts", () -> home.rounds.close("spring", all, Optional.of("all ill"), TRAINER));
        refused("round.not-closed", () -> home.rounds.score("spring", TRAINER));
        refused("round.taken", () -> home.rounds.open(Played.plan("spring", DESIGN, List.of(OP), List.of()), TRAINER));
        refused(
                "round.knows-key",
                () -> home.rounds.open(Played.plan("autumn", DESIGN, List.of(OP, TRAINER.who()), List.of()), TRAINER));
        refused("round.no-experts", () -> home.rounds.open(withoutExperts("autumn"), TRAINER));
        wrong("twice", () -> home.rounds.open(Played.plan("autumn", DESIGN, List.of(OP, EXPERT), List.of()), TRAINER));
        assertThat(home.entries()).hasSize(before);
        assertThat(folder.resolve("training").resolve("autumn.key.json")).doesNotExist();
    }

    private static RoundPlan withoutExperts(String id) {
        var plan = Played.plan(id, DESIGN, List.of(OP), List.of());
        return new RoundPlan(
                plan.id(),
                plan.method(),
                plan.format(),
                plan.develop(),
                plan.window(),
                plan.design(),
                plan.readers(),
                List.of(EXPERT),
                List.of(),
                plan.keyMaker());
    }

    @Test
    void a_round_is_scored_once_and_by_nobody_who_read_in_it() {
        everybodyCalls();
        home.rounds.close("spring", List.of(), Optional.empty(), TRAINER);
        refused("round.closed", () -> call(OP, List.of()));
        refused("round.own-calls", () -> home.rounds.score("spring", Actor.of(OP)));
        refused("round.own-calls", () -> home.rounds.score("spring", Actor.of(EXPERT)));
        home.rounds.score("spring", TRAINER);
        refused("round.scored-already", () -> home.rounds.score("spring", TRAINER));
    }

    @Test
    void a_key_that_was_changed_or_lost_is_never_opened() throws IOException {
        everybodyCalls();
        Path file = folder.resolve("training").resolve("spring.key.json");
        String text = Files.readString(file);
        String changed = text.replaceFirst("\"class\":\"blank\"", "\"class\":\"clear\"");
        assertThat(changed).isNotEqualTo(text);
        Files.writeString(file, changed);
        refused("round.key-changed", () -> home.rounds.close("spring", List.of(), Optional.empty(), TRAINER));
        Files.delete(file);
        refused("round.key-elsewhere", () -> home.rounds.close("spring", List.of(), Optional.empty(), TRAINER));
        Files.writeString(file, text);
        assertThat(home.rounds
                        .close("spring", List.of(), Optional.empty(), TRAINER)
                        .keyHolds())
                .contains(true);
        assertThat(file).doesNotExist();
    }

    @Test
    void a_panel_of_photographs_has_its_key_beforehand_and_two_rounds_of_it_are_compared() {
        List<Hash> kept = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            kept.add(home.photograph(i));
        }
        List<PanelStrip> panel = java.util.stream.IntStream.rangeClosed(1, 8)
                .mapToObj(i -> new PanelStrip(
                        "photo-" + i,
                        i <= 4 ? StripClass.NEAR_LIMIT : StripClass.BLANK,
                        i <= 4 ? Optional.of(true) : Optional.empty(),
                        Optional.of(kept.get(i - 1)),
                        Optional.of(new BigDecimal(i <= 4 ? i : 0))))
                .toList();
        Design design = Played.design(4, 4, 0, 0, 0, new PassRule(4, 0, 0, 0, 0));
        played("panel-1", design, panel, strip -> false);
        played("panel-2", design, panel, strip -> true);
        Compared compared = home.rounds.compare(OP, "panel-1", "panel-2");
        assertThat(compared.shared()).isEqualTo(8);
        assertThat(compared.firstOnly()).isZero();
        assertThat(compared.secondOnly()).isEqualTo(4);
        // binomial(4, 1/2): 2 · (1/2)^4
        assertThat(compared.test().orElseThrow().exactP()).isCloseTo(0.125, within(1e-15));
        Round round = home.rounds.find("panel-1").orElseThrow();
        assertThat(round.photographs()).hasSize(8).containsKeys(round.codes().get(0));
        assertThat(round.plan().keyMaker()).isNotBlank();
        Series share = home.papers.round(round).sections().stream()
                .filter(Section.Figure.class::isInstance)
                .map(figure -> ((Section.Figure) figure).chart())
                .filter(chart -> chart.title().contains("by contrast"))
                .findFirst()
                .orElseThrow()
                .series()
                .get(1);
        // four blanks at 0 % called without, one near-limit strip at each of 1 to 4 % overlooked in the first round
        assertThat(share.x()).containsExactly(0, 1, 2, 3, 4);
        assertThat(share.y()).containsOnly(0);
    }

    @Test
    void a_photograph_that_is_kept_nowhere_makes_no_panel() {
        long before = home.journal.status().size();
        Hash none = Hash.ofContent("never kept");
        List<PanelStrip> panel = List.of(
                new PanelStrip("photo-1", StripClass.BLANK, Optional.empty(), Optional.of(none), Optional.empty()));
        Design design = Played.design(1, 0, 0, 0, 0, new PassRule(0, 0, 0, 0, 0));
        wrong(
                "the photograph of 'photo-1' is kept nowhere here as a picture: " + none.hex(),
                () -> home.rounds.open(Played.plan("panel-9", design, List.of(OP), panel), TRAINER));
        assertThat(home.journal.status().size()).isEqualTo(before);
        assertThat(folder.resolve("training/panel-9.key.json")).doesNotExist();
    }

    private void played(
            String id,
            Design design,
            List<PanelStrip> panel,
            java.util.function.Function<RoundKey.Sealed, Boolean> near) {
        Prepared opened = home.rounds.open(Played.plan(id, design, List.of(OP), panel), TRAINER);
        Instant started = home.clock.instant();
        home.after(Duration.ofMinutes(20));
        home.rounds.call(
                id, OP, Played.calls(opened.round(), opened.key(), started, near), Optional.empty(), Actor.of(OP));
        home.rounds.close(id, List.of(), Optional.empty(), TRAINER);
        home.rounds.score(id, TRAINER);
    }

    @Test
    void the_index_rebuilt_tells_the_same_rounds() {
        everybodyCalls();
        home.rounds.close("spring", List.of(), Optional.empty(), TRAINER);
        Round before = home.rounds.score("spring", TRAINER);
        home.index.rebuild(Progress.NONE);
        assertThat(home.rounds.find("spring")).contains(before);
        assertThat(home.rounds.all()).containsExactly(before);
    }

    private Entry entry(String kind) {
        return home.entries().stream()
                .filter(entry -> entry.kind().equals(kind))
                .findFirst()
                .orElseThrow();
    }

    private static String tally(ReaderScore score, Topic topic) {
        return score.of(topic).map(tally -> tally.right() + "/" + tally.of()).orElse("-");
    }

    private static void refused(String code, Runnable act) {
        assertThatThrownBy(act::run)
                .isInstanceOfSatisfying(
                        Refusal.class, no -> assertThat(no.code()).isEqualTo(code));
    }

    private static void wrong(String text, Runnable act) {
        assertThatThrownBy(act::run).isInstanceOf(BadInput.class).hasMessageContaining(text);
    }
}
