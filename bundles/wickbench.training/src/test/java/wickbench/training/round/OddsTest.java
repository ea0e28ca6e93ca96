package wickbench.training.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.training.Design;
import wickbench.training.Operating;
import wickbench.training.PassRule;
import wickbench.training.Played;
import wickbench.training.Skill;
import wickbench.training.StripClass;

class OddsTest {

    /** P(pass | chance of seeing each of n blind positives), m misses allowed; reckoned with SciPy 1.10.1, four decimals. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            10 | 0 | .9044 | .5987 | .3487 | .1074 | .0282 | .0010
            20 | 0 | .8179 | .3585 | .1216 | .0115 | .0008 | .0000
            20 | 1 | .9831 | .7358 | .3917 | .0692 | .0076 | .0000
            30 | 1 | .9639 | .5535 | .1837 | .0105 | .0003 | .0000
            59 | 0 | .5527 | .0485 | .0020 | .0000 | .0000 | .0000
            """)
    void the_chance_to_pass_is_as_tabled(
            int strips, int misses, double p99, double p95, double p90, double p80, double p70, double p50) {
        Design design = Played.design(0, strips, 0, 0, 0, new PassRule(misses, 0, 0, 0, 0));
        double[] seen = {.99, .95, .90, .80, .70, .50};
        double[] tabled = {p99, p95, p90, p80, p70, p50};
        for (int i = 0; i < seen.length; i++) {
            Skill skill = new Skill(seen[i], 1, 0, 1);
            assertThat(Odds.passes(design, skill)).as("%s", seen[i]).isCloseTo(tabled[i], within(5.1e-5));
            assertThat(Odds.fails(design, skill)).isCloseTo(1 - Odds.passes(design, skill), within(1e-14));
        }
    }

    @Test
    void each_kind_of_mistake_is_a_chance_of_its_own() {
        Design design = Played.design(5, 0, 2, 1, 2, new PassRule(0, 1, 1, 0, 0));
        Skill skill = new Skill(0.5, 0.9, 0.1, 0.8);
        double clear = Math.pow(.9, 3) + 3 * .1 * Math.pow(.9, 2);
        double blanks = Math.pow(.9, 5) + 5 * .1 * Math.pow(.9, 4);
        assertThat(Odds.passes(design, skill)).isCloseTo(clear * blanks * .64, within(1e-14));
    }

    @Test
    void a_rule_that_allows_every_mistake_is_always_passed() {
        Design design = Played.design(1, 1, 1, 1, 1, new PassRule(9, 9, 9, 9, 9));
        assertThat(Odds.passes(design, Skill.POOR)).isEqualTo(1);
        assertThat(Odds.fails(design, Skill.POOR)).isZero();
    }

    @Test
    void the_suggested_rule_keeps_a_poor_reader_out_and_is_as_mild_as_that_allows() {
        Map<StripClass, Integer> strips = Map.of(StripClass.NEAR_LIMIT, 20, StripClass.BLANK, 10);
        PassRule rule = Odds.suggested(strips, Skill.POOR);
        Design design = new Design(strips, rule);
        assertThat(Odds.passes(design, Skill.POOR)).isLessThanOrEqualTo(0.05);
        PassRule milder = new PassRule(rule.nearMissed() + 1, 0, 0, 0, 1);
        assertThat(Odds.passes(new Design(strips, milder), Skill.POOR)).isGreaterThan(0.05);
        Operating operating = Odds.of(design, Skill.POOR, Skill.GOOD);
        assertThat(operating.curve()).isSortedAccordingTo(java.util.Comparator.comparing(Operating.Point::passes));
    }

    @Test
    void a_round_too_small_to_tell_says_so_by_its_chance() {
        Map<StripClass, Integer> strips = Map.of(StripClass.NEAR_LIMIT, 3);
        assertThat(Odds.suggested(strips, Skill.POOR).nearMissed()).isZero();
        assertThat(Odds.passes(new Design(strips, Odds.suggested(strips, Skill.POOR)), Skill.POOR))
                .isCloseTo(.216, within(1e-12));
    }
}
