package wickbench.training.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.person.PersonId;
import wickbench.figures.agreement.Kappa;
import wickbench.figures.agreement.ManyReaders;
import wickbench.training.Call;
import wickbench.training.PassRule;
import wickbench.training.Played;
import wickbench.training.ReaderScore;
import wickbench.training.ReaderScore.Topic;
import wickbench.training.Round;
import wickbench.training.RoundKey;
import wickbench.training.RoundPlan;
import wickbench.training.StripClass;
import wickbench.training.TrainingHome;

class ScoringTest {
    private static final Path FLEISS = Path.of("src/test/resources/wickbench/training/fleiss1971_counts.csv");
    private static final PersonId READER = TrainingHome.OP;

    /**
     * Cross-tables of the attribute study, AIAG manual Measurement Systems Analysis, ch. III-C: the printed kappa to two places
     * from memory, six places reckoned with R 4.2.2 (psych 2.2.9).
     */
    @ParameterizedTest
    @CsvSource({
        "44,6,3,97,.862944",
        "42,5,9,94,.788007",
        "43,7,8,92,.776119",
        "45,5,3,97,.878788",
        "45,2,3,100,.922983",
        "42,9,6,93,.773960"
    })
    void kappa_is_as_the_attribute_study_has_it(long a, long b, long c, long d, double kappa) {
        assertThat(kappa(new long[][] {{a, b}, {c, d}}).kappa().estimate()).isCloseTo(kappa, within(1e-6));
    }

    /** Cohen, Educ. Psychol. Meas. 20:37 (1960), Table 2: kappa .492, as the help page of psych 2.2.9 quotes it. */
    @Test
    void kappa_is_as_cohen_printed_it() {
        assertThat(kappa(new long[][] {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}})
                        .kappa()
                        .estimate())
                .isCloseTo(.492, within(5e-4));
    }

    /** Gwet's example in the vignette of irrCAC: kappa .7964094; AC1 .8493305 reckoned. */
    @Test
    void ac1_is_as_gwet_has_it() {
        Kappa found = kappa(new long[][] {{13, 0, 0}, {0, 20, 7}, {0, 4, 56}});
        assertThat(found.kappa().estimate()).isCloseTo(.7964094, within(1e-7));
        assertThat(found.ac1()).isCloseTo(.8493305, within(1e-7));
    }

    private static Kappa kappa(long[][] counts) {
        return Scoring.kappa(counts).orElseThrow();
    }

    /** Fleiss, Psychol. Bull. 76:378 (1971): kappa .4302445, as statsmodels and irr have it. */
    @Test
    void the_kappa_of_many_readers_is_as_fleiss_has_it() throws IOException {
        long[][] counts = Files.readAllLines(FLEISS).stream()
                .skip(1)
                .map(line -> Arrays.stream(line.split(","))
                        .mapToLong(Long::parseLong)
                        .toArray())
                .toArray(long[][]::new);
        ManyReaders found = Scoring.many(counts).orElseThrow();
        assertThat(found.kappa()).isCloseTo(.4302445, within(5e-8));
        assertThat(found.ac1()).isCloseTo(.447885, within(5e-7));
    }

    /** Effectiveness of the same attribute study, exact limits (Clopper and Pearson), reckoned with SciPy. */
    @ParameterizedTest
    @CsvSource({"42,50,.7089,.9283", "45,50,.7819,.9667", "40,50,.6628,.8997", "39,50,.6404,.8847"})
    void the_limits_of_a_share_are_exact(int right, int of, double lower, double upper) {
        ReaderScore.Tally tally = Scoring.tally(Topic.NEAR, right, of);
        assertThat(tally.share().lower()).isCloseTo(lower, within(5e-5));
        assertThat(tally.share().upper()).isCloseTo(upper, within(5e-5));
    }

    /**
     * Through a whole round: hits among near-limit strips with a line, alarms among blanks. Log-linear correction (Hautus 1995),
     * reckoned with R 4.2.2 (psyphy 0.2-3).
     */
    @ParameterizedTest
    @CsvSource({"20,25,10,25,1.0445", "25,25,0,25,4.1398", "20,20,0,20,3.9615", "24,25,1,25,3.1489", "50,50,2,50,3.9882"
    })
    void d_prime_is_as_tabled(int hits, int near, int alarms, int blanks, double dPrime) {
        ReaderScore score =
                Scoring.of(round(hits, near, alarms, blanks)).scores().get(0);
        assertThat(score.dPrime().orElseThrow()).isCloseTo(dPrime, within(5e-5));
        assertThat(score.of(Topic.NEAR).orElseThrow().right()).isEqualTo(hits);
        assertThat(score.of(Topic.WITHOUT).orElseThrow().wrong()).isEqualTo(alarms);
    }

    private static Round round(int hits, int near, int alarms, int blanks) {
        RoundPlan plan = Played.plan(
                "tabled",
                Played.design(blanks, near, 0, 0, 0, new PassRule(0, 0, 0, 0, 0)),
                List.of(READER),
                List.of());
        List<RoundKey.Sealed> strips = new ArrayList<>();
        List<Call> calls = new ArrayList<>();
        Instant started = TrainingHome.START;
        for (int i = 0; i < near + blanks; i++) {
            boolean isNear = i < near;
            RoundKey.Sealed strip = new RoundKey.Sealed(
                    "C" + i,
                    "item " + i,
                    isNear ? StripClass.NEAR_LIMIT : StripClass.BLANK,
                    isNear ? Optional.of(true) : Optional.empty(),
                    Optional.empty());
            boolean seen = isNear ? i < hits : i < near + alarms;
            RoundKey.Sealed asSeen = new RoundKey.Sealed(
                    strip.code(), strip.item(), StripClass.NEAR_LIMIT, Optional.empty(), Optional.empty());
            strips.add(strip);
            calls.add(Played.call(bare(plan), asSeen, seen, started, Played.DEVELOP));
        }
        RoundKey key = new RoundKey("tabled", "00", strips);
        return new Round(
                plan,
                Round.State.CLOSED,
                started,
                READER,
                strips.stream().map(RoundKey.Sealed::code).toList(),
                Map.of(),
                key.commitment(),
                Map.of(READER, calls),
                Optional.of(new Round.Opened(key, started, List.of(), Optional.empty())),
                List.of(),
                Optional.empty(),
                Set.of(),
                List.of());
    }

    private static Round bare(RoundPlan plan) {
        return new Round(
                plan,
                Round.State.OPEN,
                TrainingHome.START,
                READER,
                List.of(),
                Map.of(),
                new RoundKey("tabled", "00", List.of()).commitment(),
                Map.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Set.of(),
                List.of());
    }
}
