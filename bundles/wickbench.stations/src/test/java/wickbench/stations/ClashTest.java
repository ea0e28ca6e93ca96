package wickbench.stations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.authority.Actor;
import wickbench.api.check.Refusal;
import wickbench.api.clash.Clash;
import wickbench.api.clash.Settlement;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Seen;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.bench.MethodShelf;
import wickbench.ledger.desk.Bases;
import wickbench.people.PeopleService;
import wickbench.people.profile.ProfileInForce;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Schemas;
import wickbench.training.Competence;
import wickbench.training.CompetenceState;
import wickbench.training.book.Coach;
import wickbench.training.book.IndexedBook;
import wickbench.training.book.JournalPen;

/** Two decisions neither of which had seen the other. */
class ClashTest {
    private static final PersonId ADA = new PersonId("p-01");
    private static final Actor TRAINER = Actor.of(new PersonId("p-02"));

    @TempDir
    Path root;

    private House bench;
    private House quality;

    @BeforeEach
    void open() throws IOException {
        Path share = Files.createDirectory(root.resolve("share"));
        bench = new House(root.resolve("bench"), "bench", share, Duration.ZERO);
        quality = new House(root.resolve("quality"), "quality", share, Duration.ofMinutes(-7));
        settle();
    }

    @AfterEach
    void close() {
        bench.close();
        quality.close();
    }

    private void settle() {
        for (int round = 0; round < 2; round++) {
            bench.exchange();
            quality.exchange();
        }
    }

    /** Records at one station what the other does not see before it records too: nothing is exchanged meanwhile. */
    private static EntryRef append(House house, Draft draft) {
        return house.journal.append(List.of(draft)).get(0).ref();
    }

    private static EntryRef says(House house, String word) {
        return append(house, Words.decided(Draft.randomId(house.home.chance()), "cup", word));
    }

    @Test
    void decisions_that_had_not_seen_one_another_clash_on_both_stations_and_both_are_kept() {
        apart(() -> {
            says(bench, "mug");
            says(quality, "beaker");
        });
        assertThat(bench.index.clashes()).hasSize(1).isEqualTo(quality.index.clashes());
        Clash clash = bench.index.clash("word:cup").orElseThrow();
        assertThat(clash.decisions()).extracting(ref -> ref.station().value()).containsExactly("bench", "quality");
        assertThat(clash.decisions()).allMatch(ref -> bench.journal.entry(ref).isPresent());
    }

    /** Lets two stations act while the folder is away. */
    private void apart(Runnable acts) {
        move("share", "away");
        acts.run();
        move("away", "share");
        settle();
    }

    private void move(String from, String to) {
        try {
            Files.move(root.resolve(from), root.resolve(to));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void one_who_had_seen_the_other_decides_anew_and_nothing_clashes() {
        says(bench, "mug");
        settle();
        says(quality, "beaker");
        settle();
        assertThat(bench.index.clashes()).isEmpty();
        assertThat(quality.index.clashes()).isEmpty();
    }

    @Test
    void two_who_say_the_same_do_not_clash() {
        apart(() -> {
            says(bench, "mug");
            says(quality, "mug");
        });
        assertThat(bench.index.clashes()).isEmpty();
    }

    @Test
    void limits_of_one_trend_frozen_over_two_periods_clash_and_the_settled_one_counts() {
        List<EntryRef> said = new ArrayList<>();
        apart(() -> {
            said.add(based(bench, "2026-01-01"));
            said.add(based(quality, "2026-02-01"));
        });
        Clash clash = bench.index.clashes().get(0);
        assertThat(clash.subject()).isEqualTo("trend:{\"line\":\"L1\"}");
        assertThat(quality.index.clashes()).containsExactly(clash);
        // the older one, so that not merely the newest counts
        desk(bench).settle(clash.subject(), said.get(1), "we talked", ADA, Optional.empty());
        settle();
        for (House house : List.of(bench, quality)) {
            assertThat(house.index.clashes()).isEmpty();
            assertThat(new Bases(house.index, house.journal).of("{\"line\":\"L1\"}"))
                    .hasValueSatisfying(base -> assertThat(base.from()).hasToString("2026-02-01"));
        }
    }

    private static EntryRef based(House house, String from) {
        Json.Obj body = Json.object()
                .with("line", "L1")
                .with("from", from)
                .with("to", "2026-03-01")
                .with("reason", "a quiet time");
        return append(house, new Draft(Draft.randomId(house.home.chance()), ADA, "trend.based", 1, body));
    }

    @Test
    void a_settlement_ends_it_everywhere_and_two_that_had_not_seen_one_another_clash_again() {
        List<EntryRef> said = new ArrayList<>();
        apart(() -> {
            said.add(says(bench, "mug"));
            said.add(says(quality, "beaker"));
        });
        apart(() -> {
            desk(bench).settle("word:cup", said.get(0), "it is a mug", ADA, Optional.empty());
            assertThat(desk(bench).open()).isEmpty();
            desk(quality).settle("word:cup", said.get(1), "it is a beaker", ADA, Optional.empty());
        });
        assertThat(bench.index.clashes()).hasSize(1);
        EntryRef mine = bench.index.clash("word:cup").orElseThrow().decisions().get(0);
        desk(bench).settle("word:cup", mine, "we talked", ADA, Optional.empty());
        settle();
        assertThat(bench.index.clashes()).isEmpty();
        assertThat(quality.index.clashes()).isEmpty();
    }

    private static ClashDesk desk(House house) {
        return new ClashDesk(house.home, house.journal, house.index, (act, draft, passphrase) -> draft);
    }

    @Test
    void what_does_not_clash_is_not_settled() {
        EntryRef said = says(bench, "mug");
        assertThatThrownBy(() -> desk(bench).settle("word:cup", said, "why", ADA, Optional.empty()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("clash.none"));
        apart(() -> {
            says(bench, "mug");
            says(quality, "beaker");
        });
        assertThatThrownBy(
                        () -> desk(bench).settle("word:cup", EntryRef.parse("bench:0"), "why", ADA, Optional.empty()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("clash.other"));
    }

    @Test
    void no_text_of_a_method_is_in_force_while_two_stand_against_one_another() {
        List<EntryRef> issued = new ArrayList<>();
        MethodId id = new MethodId("m-0");
        apart(() -> {
            issued.add(append(bench, new Acts(new Random(1)).issue("m-0", 1, "Rinse water")));
            issued.add(append(quality, new Acts(new Random(2)).issue("m-0", 1, "Rinse water, hot")));
        });
        MethodShelf shelf = new MethodShelf(bench.journal, bench.index, (act, draft, passphrase) -> draft);
        assertThat(shelf.inForce(id, bench.home.clock().instant())).isEmpty();
        assertThat(shelf.versions(id)).hasSize(2);
        desk(bench).settle("method:m-0", issued.get(1), "the hot one", ADA, Optional.empty());
        assertThat(shelf.inForce(id, bench.home.clock().instant()).orElseThrow().title())
                .isEqualTo("Rinse water, hot");
    }

    @Test
    void of_two_profiles_the_later_holds_until_one_is_chosen() {
        List<EntryRef> issued = new ArrayList<>();
        apart(() -> {
            issued.add(append(bench, profile(2)));
            issued.add(append(quality, profile(5)));
        });
        ProfileInForce profiles = new ProfileInForce(bench.home, bench.index);
        assertThat(bench.index.clash("profile").orElseThrow().decisions()).containsExactlyElementsOf(issued);
        // the clock of the other is seven minutes late
        assertThat(years(profiles)).isEqualTo(2);
        desk(bench).settle("profile", issued.get(1), "agreed", ADA, Optional.empty());
        assertThat(years(profiles)).isEqualTo(5);
        settle();
        assertThat(years(new ProfileInForce(quality.home, quality.index))).isEqualTo(5);
        assertThat(quality.index.clashes()).isEmpty();
    }

    private static Draft profile(int years) {
        String text = """
                {"plant": "Quellmoor", "zone": "Europe/Vienna", "units": ["mg/kg"], "required_checks": [],
                 "required_signatures": [], "double_read": 0.1, "review_days": 7,
                 "outcome_order": ["positive-above-range", "positive", "invalid", "negative"], "retention_years": %d}""".formatted(years);
        Json.Obj body = Json.object()
                .with("profile", JsonReader.readObject("profile", text).orRefuse());
        return new Draft(UUID.randomUUID(), ADA, "profile.issued", 1, body);
    }

    private int years(ProfileInForce profiles) {
        return profiles.inForce(bench.home.clock().instant()).orElseThrow().retentionYears();
    }

    @Test
    void who_is_authorised_at_one_station_and_suspended_at_the_other_stays_suspended_until_it_is_settled() {
        MethodId method = new MethodId("m-0");
        training(quality).authorise(ADA, method, Optional.empty(), "round passed", TRAINER);
        settle();
        apart(() -> {
            training(bench).authorise(ADA, method, Optional.empty(), "renewed", TRAINER);
            training(quality).suspend(ADA, Optional.of(method), Optional.empty(), "overlooks faint lines", TRAINER);
        });
        Clash clash = bench.index.clash("competence:p-01:m-0").orElseThrow();
        assertThat(quality.index.clash("competence:p-01:m-0")).contains(clash);
        for (House house : List.of(bench, quality)) {
            Competence now = competence(house, method);
            assertThat(now.state()).as(house.home.folder().toString()).isEqualTo(CompetenceState.SUSPENDED);
            assertThat(now.suspensions()).hasSize(1);
        }
        EntryRef renewed = clash.decisions().stream()
                .filter(ref -> ref.station().value().equals("bench"))
                .findFirst()
                .orElseThrow();
        desk(bench).settle("competence:p-01:m-0", renewed, "another person was meant", ADA, Optional.empty());
        settle();
        assertThat(competence(bench, method).state()).isEqualTo(CompetenceState.AUTHORISED);
        assertThat(competence(quality, method)).isEqualTo(competence(bench, method));
    }

    @Test
    void a_suspension_that_a_wrong_clock_puts_before_any_authorisation_suspends_all_the_same() {
        MethodId method = new MethodId("m-0");
        training(bench).authorise(ADA, method, Optional.empty(), "round passed", TRAINER);
        settle();
        Json.Obj body = Json.object()
                .with("person", ADA.value())
                .with("method", method.value())
                .with("at", "2020-01-01T00:00:00.000Z")
                .with("reason", "overlooks faint lines");
        append(quality, new Draft(UUID.randomUUID(), TRAINER.who(), "training.suspended", 1, body));
        settle();
        assertThat(competence(bench, method).state()).isEqualTo(CompetenceState.SUSPENDED);
        training(bench).restore(ADA, method, Optional.empty(), "drilled, round passed", TRAINER);
        assertThat(competence(bench, method).state()).isEqualTo(CompetenceState.AUTHORISED);
    }

    private static IndexedBook book(House house) {
        return new IndexedBook(house.home, house.index, () -> Site.of(Optional.empty(), house.journal.founding()));
    }

    private static Coach training(House house) {
        return new Coach(book(house), new JournalPen(house.home, house.journal, (act, draft, passphrase) -> draft));
    }

    /** How it stands a little later, when the late clock has caught up too. */
    private Competence competence(House house, MethodId method) {
        return book(house).competence(ADA, method, bench.home.clock().instant().plus(Duration.ofMinutes(1)));
    }

    @Test
    void a_person_has_only_the_roles_that_both_give() {
        enrol(bench);
        settle();
        apart(() -> {
            append(bench, assigned("reviewer", "administrator"));
            append(quality, assigned("reviewer", "stock-keeper"));
        });
        wickbench.people.Roster roster = new wickbench.people.Roster(bench.home, bench.journal, bench.index);
        PeopleService people = new PeopleService(
                bench.home,
                bench.journal,
                roster,
                (act, draft, passphrase) -> draft,
                new wickbench.people.Keeping(bench.home, bench.journal, roster, at -> Optional.empty()));
        assertThat(people.find(ADA).orElseThrow().roles()).containsExactly(Role.REVIEWER);
    }

    private static void enrol(House house) {
        Json.Obj body = Json.object()
                .with("person", ADA.value())
                .with("roles", Json.texts(List.of("administrator")))
                .with("file", "0".repeat(64));
        append(house, new Draft(Draft.randomId(house.home.chance()), ADA, "person.enrolled", 1, body));
    }

    private static Draft assigned(String... roles) {
        Json.Obj body = Json.object().with("person", ADA.value()).with("roles", Json.texts(List.of(roles)));
        return new Draft(UUID.randomUUID(), ADA, "person.assigned", 1, body);
    }

    @Test
    void the_command_line_lists_and_settles() {
        apart(() -> {
            says(bench, "mug");
            says(quality, "beaker");
        });
        HeardTerminal listed = HeardTerminal.of(ADA, false);
        assertThat(run(listed, "clashes")).isEqualTo(1);
        assertThat(listed.printed()).anyMatch(line -> line.startsWith("word:cup | quality:"));
        String chosen =
                bench.index.clash("word:cup").orElseThrow().decisions().get(1).toString();
        HeardTerminal settled = HeardTerminal.of(ADA, false);
        assertThat(run(settled, "settle", "word:cup", "--stands", chosen, "--reason", "we talked"))
                .isZero();
        assertThat(run(HeardTerminal.of(ADA, false), "clashes")).isZero();
        HeardTerminal stations = HeardTerminal.of(ADA, false);
        assertThat(run(stations, "list")).isZero();
        assertThat(stations.printed()).anyMatch(line -> line.startsWith("quality | "));
        long seen = bench.index.sightings().stream()
                .filter(each -> each.station().value().equals("quality"))
                .filter(each -> each.other().value().equals("bench"))
                .findFirst()
                .orElseThrow()
                .size();
        assertThat(seen).isPositive();
        assertThat(stations.printed()).anyMatch(line -> line.contains("| bench " + seen + " |"));
        HeardTerminal machine = HeardTerminal.of(ADA, true);
        assertThat(run(machine, "list")).isZero();
        assertThat(String.join("", machine.printed()))
                .contains("\"seen\":[{\"entries\":" + seen + ",\"station\":\"bench\"}]");
    }

    private int run(HeardTerminal terminal, String... args) {
        Object group =
                new StationCommands(bench.journal, bench.journal.others(), bench.index, desk(bench)).commands(terminal);
        return new CommandLine(group)
                .setExecutionExceptionHandler((e, line, parsed) -> {
                    throw e;
                })
                .execute(args);
    }

    @Test
    void what_is_recorded_of_stations_is_as_its_schemas_say() throws IOException {
        apart(() -> {
            says(bench, "mug");
            says(quality, "beaker");
        });
        EntryRef stands =
                bench.index.clash("word:cup").orElseThrow().decisions().get(0);
        desk(bench).settle("word:cup", stands, "we talked", ADA, Optional.empty());
        Schemas schemas = Schemas.published();
        List<String> kinds = new ArrayList<>();
        bench.journal.read(bench.journal.stations().get(0), 0, entry -> {
            if (List.of(Seen.KIND, "station.pinned", Settlement.KIND).contains(entry.kind())) {
                kinds.add(entry.kind());
                assertThat(schemas.errors(schema(entry), entry.body().canonical()))
                        .isEmpty();
            }
            return true;
        });
        assertThat(kinds).contains(Seen.KIND, "station.pinned", Settlement.KIND);
        assertThat(schemas.errors(
                        "settings-1.schema.json",
                        Files.readString(root.resolve("bench").resolve("settings.json"))))
                .isEmpty();
    }

    private static String schema(Entry entry) {
        return entry.kind() + "-" + entry.v() + ".schema.json";
    }
}
