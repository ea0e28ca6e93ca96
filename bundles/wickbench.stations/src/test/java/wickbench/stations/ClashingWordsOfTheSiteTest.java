package wickbench.stations;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.stations.TwoStations.ADA;
import static wickbench.stations.TwoStations.append;
import static wickbench.stations.TwoStations.desk;

import java.io.IOException;
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
import wickbench.api.clash.Clash;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.method.MethodId;
import wickbench.api.person.Role;
import wickbench.bench.MethodShelf;
import wickbench.ledger.desk.Bases;
import wickbench.people.PeopleService;
import wickbench.people.profile.ProfileInForce;

/** What holds of a method, a profile, a trend and a person's roles while two stations say different things of it. */
class ClashingWordsOfTheSiteTest {
    @TempDir
    Path root;

    private TwoStations site;
    private House bench;
    private House quality;

    @BeforeEach
    void open() throws IOException {
        site = new TwoStations(root, Duration.ofMinutes(-7));
        bench = site.bench;
        quality = site.quality;
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void no_text_of_a_method_is_in_force_while_two_stand_against_one_another() {
        List<EntryRef> issued = new ArrayList<>();
        MethodId id = new MethodId("m-0");
        site.apart(() -> {
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
        site.apart(() -> {
            issued.add(append(bench, profile(2)));
            issued.add(append(quality, profile(5)));
        });
        ProfileInForce profiles = new ProfileInForce(bench.home, bench.index);
        assertThat(bench.index.clash("profile").orElseThrow().decisions()).containsExactlyElementsOf(issued);
        // the clock of the other is seven minutes late
        assertThat(years(profiles)).isEqualTo(2);
        desk(bench).settle("profile", issued.get(1), "agreed", ADA, Optional.empty());
        assertThat(years(profiles)).isEqualTo(5);
        site.exchange();
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
    void limits_of_one_trend_frozen_over_two_periods_clash_and_the_settled_one_counts() {
        List<EntryRef> said = new ArrayList<>();
        site.apart(() -> {
            said.add(based(bench, "2026-01-01"));
            said.add(based(quality, "2026-02-01"));
        });
        Clash clash = bench.index.clashes().get(0);
        assertThat(clash.subject()).isEqualTo("trend:{\"line\":\"L1\"}");
        assertThat(quality.index.clashes()).containsExactly(clash);
        // the older one, so that not merely the newest counts
        desk(bench).settle(clash.subject(), said.get(1), "we talked", ADA, Optional.empty());
        site.exchange();
        for (House house : site.both()) {
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
    void a_person_has_only_the_roles_that_both_give() {
        enrol(bench);
        site.exchange();
        site.apart(() -> {
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
}
