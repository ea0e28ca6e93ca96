package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.progress.Progress;

/** The law of the index: whatever was kept equals what is rebuilt. */
class IndexLawTest {
    private static final List<String> WORDS = List.of("seen", "faint", "not seen", "damaged", "other");
    private static final Tallies ALWAYS = Tallies.named("always");
    private static final Tallies LATE = Tallies.named("late");
    private static final String[] ALL = {"always", "late", EntryIds.NAME};

    /** Entries appended at once, and whether the program was closed and opened before. */
    record Step(int entries, boolean reopened, boolean lateView) {}

    @Provide
    Arbitrary<List<Step>> steps() {
        Arbitrary<Integer> entries = Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(9, Arbitraries.integers().between(0, 30)),
                net.jqwik.api.Tuple.of(1, Arbitraries.integers().between(990, 2010)));
        return net.jqwik.api.Combinators.combine(entries, Arbitraries.of(true, false), Arbitraries.of(true, false))
                .as(Step::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(6);
    }

    @Property(tries = 25)
    void rebuiltEqualsKept(@ForAll("steps") List<Step> steps, @ForAll long seed) throws IOException {
        try (TestHome home = TestHome.made()) {
            SplittableRandom chance = new SplittableRandom(seed);
            home.views(ALWAYS);
            for (Step step : steps) {
                if (step.reopened()) {
                    home.reopen();
                }
                if (step.lateView()) {
                    home.views(ALWAYS, LATE);
                }
                home.journal().append(drafts(step.entries(), chance));
                home.index().read("always", rows -> 0);
            }
            home.views(ALWAYS, LATE);
            List<String> kept = Dump.of(home.index(), ALL);
            home.index().rebuild(Progress.NONE);
            assertThat(Dump.of(home.index(), ALL)).isEqualTo(kept);
            assertThat(kept.stream().filter(line -> line.startsWith(EntryIds.NAME)))
                    .hasSize((int) home.size());
        }
    }

    private static List<Draft> drafts(int count, SplittableRandom chance) {
        return IntStream.range(0, count).mapToObj(i -> draft(chance)).toList();
    }

    private static Draft draft(SplittableRandom chance) {
        Optional<Json> amount = chance.nextInt(3) == 0
                ? Optional.empty()
                : Optional.of(new Json.Num(BigDecimal.valueOf(chance.nextInt(100_000), 3)));
        return Said.one(WORDS.get(chance.nextInt(WORDS.size())), amount, chance);
    }
}
