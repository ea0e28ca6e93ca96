package wickbench.ledger.trend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wickbench.figures.sums.Answer;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sums;
import wickbench.figures.sums.TableText;
import wickbench.ledger.trend.TrendSignal.News;
import wickbench.ledger.trend.Trending.Kind;

/** Whether what a chart signals is good news; limits by hand after Benneyan (2001) and Montgomery, chapter 7. */
class TrendSignalTest {

    /** Mean gap 60/11 = 5.45, upper limit 5.45 + 3√(5.45·6.45) = 23.2: one gap of 50 is above it. */
    @Test
    void a_long_time_without_an_event_is_good_news() {
        assertThat(of(Kind.G, "gaps", "gap\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n50"))
                .singleElement()
                .satisfies(signal -> {
                    assertThat(signal.point()).contains(11);
                    assertThat(signal.news()).isEqualTo(News.FEWER);
                });
    }

    /** Mean gap 26/5 = 5.2; three events in a row with nothing between. */
    @Test
    void events_in_a_row_are_not() {
        assertThat(of(Kind.G, "gaps", "gap\n14\n0\n0\n0\n12"))
                .extracting(TrendSignal::news)
                .containsOnly(News.MORE);
    }

    /** p = 8/50, upper limit 0.16 + 3√(0.16·0.84/10) = 0.508: eight of ten are above it. */
    @Test
    void a_high_share_is_not_either() {
        assertThat(of(Kind.P, "groups", "count,size\n0,10\n0,10\n0,10\n8,10\n0,10"))
                .extracting(TrendSignal::news)
                .containsExactly(News.MORE);
    }

    private static List<TrendSignal> of(Kind kind, String table, String text) {
        Given given = new Given(Map.of("chart", kind.code()), Map.of(table, TableText.of(table, text)));
        Answer answer = ((Reckoned.Done) Sums.find("trend").orElseThrow().reckon(given)).answer();
        return TrendSignal.of(answer, kind);
    }
}
