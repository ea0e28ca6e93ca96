package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.method.Seen;
import wickbench.api.progress.Progress;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Sort;
import wickbench.ledger.services.Strips.Plain;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.RecordedReadingJson;
import wickbench.testing.Meets;

/** What stands, whatever is said later and in whatever order it arrives. */
class StandingLawTest {
    private static final List<UUID> RESULTS = List.of(new UUID(1, 1), new UUID(1, 2), new UUID(1, 3));

    /** A correction: of which result, from which station, at which hour, and which lines it states. */
    record Later(int result, int station, int hour, Seen control, Seen test) {
        RecordedReading reading() {
            return Plain.negative("S-" + result).seen(control, test).judged();
        }
    }

    @Provide
    Arbitrary<List<Later>> corrections() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 2),
                        Arbitraries.integers().between(1, 3),
                        Arbitraries.integers().between(0, 4),
                        Arbitraries.of(Seen.SEEN, Seen.NOT_SEEN),
                        Arbitraries.of(Seen.SEEN, Seen.FAINT, Seen.NOT_SEEN))
                .as(Later::new)
                .list()
                .ofMaxSize(8);
    }

    @Property(tries = 25)
    @Meets("ALCOA+ original")
    void nothingSaidLaterTakesAllergenAway(@ForAll("corrections") List<Later> corrections) throws IOException {
        try (TestSite site = TestSite.made()) {
            UUID result = site.record(Plain.negative("S-1").judged()).id();
            boolean held = false;
            for (Later later : corrections) {
                site.correct(result, later.reading());
                held |= later.reading().verdict().holds();
                ResultRow row = site.results.find(result).orElseThrow().row();
                assertThat(row.held()).isEqualTo(held);
                assertThat(row.outcome().positive() || row.sign()).isEqualTo(held);
                if (!held || later.reading().verdict().holds()) {
                    assertThat(row.outcome())
                            .isEqualTo(later.reading().verdict().outcome());
                }
            }
            assertThat(site.results.count(Filter.ALL)).isEqualTo(1);
        }
    }

    @Property(tries = 20)
    @Meets("ISO/IEC 17025 7.5.2")
    void theOrderOfArrivalDoesNotMatter(@ForAll("corrections") List<Later> corrections, @ForAll Random chance)
            throws IOException {
        List<Json.Obj> carried = carried(corrections);
        List<Json.Obj> mixed = new ArrayList<>(carried);
        Collections.shuffle(mixed, chance);
        assertThat(rows(mixed)).isEqualTo(rows(carried));
    }

    private static List<ResultRow> rows(List<Json.Obj> carried) throws IOException {
        try (TestSite site =
                new TestSite(Files.createTempDirectory("wickbench-ledger"), new Carried(new LedgerView()))) {
            for (Json.Obj each : carried) {
                site.journal.append(
                        List.of(new Draft(Draft.randomId(site.home.chance()), TestSite.WRITER, Carried.KIND, 1, each)));
            }
            List<ResultRow> kept = all(site);
            site.index.rebuild(Progress.NONE);
            assertThat(all(site)).isEqualTo(kept).hasSize(RESULTS.size());
            return kept;
        }
    }

    private static List<ResultRow> all(TestSite site) {
        return site.results
                .page(Filter.ALL, Sort.NEWEST_FIRST, Optional.empty(), 100)
                .rows();
    }

    private static List<Json.Obj> carried(List<Later> corrections) {
        List<Json.Obj> carried = new ArrayList<>();
        for (int i = 0; i < RESULTS.size(); i++) {
            carried.add(Carried.pack(
                    "recorder:" + i,
                    RESULTS.get(i),
                    Strips.START.plusSeconds(i),
                    RecordedReading.KIND,
                    RecordedReadingJson.write(Plain.negative("S-" + i).judged())));
        }
        for (int i = 0; i < corrections.size(); i++) {
            Later later = corrections.get(i);
            // an hour before the recording too: clocks of stations differ
            Instant at = Strips.START.plusSeconds(3600L * (later.hour() - 1));
            CorrectedReading body = new CorrectedReading(RESULTS.get(later.result()), "mistyped", later.reading());
            carried.add(Carried.pack(
                    "s" + later.station() + ":" + i,
                    new UUID(2, i),
                    at,
                    CorrectedReading.KIND,
                    CorrectedReadingJson.write(body)));
        }
        return carried;
    }
}
