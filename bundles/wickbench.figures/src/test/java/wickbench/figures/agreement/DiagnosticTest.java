package wickbench.figures.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;
import wickbench.figures.agreement.AttributeStudy.Judgement;

class DiagnosticTest {

    /** Formulas of Youden, Cancer 3:32 (1950); values computed in R 4.2.2. */
    @Test
    void ninety_and_ninety_five_of_a_hundred() {
        Diagnostic figures = Diagnostic.of(90, 10, 5, 95, 0.95);
        assertThat(figures.sensitivity().estimate()).isEqualTo(0.90);
        assertThat(figures.specificity().estimate()).isEqualTo(0.95);
        assertThat(figures.youden()).isEqualTo(0.85, within(1e-12));
        assertThat(figures.youdenSe()).isEqualTo(0.0370810, within(5.1e-8));
        assertThat(figures.positiveRatio().getAsDouble()).isEqualTo(18, within(1e-9));
        assertThat(figures.negativeRatio().getAsDouble()).isEqualTo(0.105263, within(5.1e-7));
        assertThat(figures.oddsRatio().getAsDouble()).isEqualTo(171, within(1e-9));
    }

    /** As above. */
    @Test
    void predictive_values_at_a_low_prevalence() {
        assertThat(Diagnostic.positiveValue(.95, .98, .02).getAsDouble()).isEqualTo(0.492228, within(5.1e-7));
        assertThat(Diagnostic.negativeValue(.95, .98, .02).getAsDouble()).isEqualTo(0.998960, within(5.1e-7));
        assertThat(Diagnostic.positiveValue(0, 1, .5)).isEmpty();
    }

    @Test
    void a_ratio_without_end_is_absent() {
        Diagnostic perfect = Diagnostic.of(10, 0, 0, 10, 0.95);
        assertThat(perfect.positiveRatio()).isEmpty();
        assertThat(perfect.negativeRatio()).hasValue(0);
        assertThat(perfect.oddsRatio()).isEmpty();
        assertThatThrownBy(() -> Diagnostic.of(0, 0, 1, 1, 0.95)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Diagnostic.of(-1, 3, 1, 1, 0.95)).isInstanceOf(NoAnswer.class);
    }

    /**
     * AIAG, Measurement Systems Analysis, attribute study of 50 items (from memory): readers right on 42, 45, 40, all on 39; exact
     * limits recomputed.
     */
    @ParameterizedTest
    @CsvSource({"42, .7089, .9283", "45, .7819, .9667", "40, .6628, .8997", "39, .6404, .8847"})
    void effectiveness_of_fifty_items(int right, double lower, double upper) {
        Limits limits = AttributeStudy.of(study(right), 0.95).readers().get("A").effectiveness();
        assertThat(limits.estimate()).isEqualTo(right / 50d);
        assertThat(limits.lower()).isEqualTo(lower, within(5.1e-5));
        assertThat(limits.upper()).isEqualTo(upper, within(5.1e-5));
    }

    /** Three trials an item; the first half of the items is positive, and one trial of each item from {@code right} on is wrong. */
    private static List<Judgement> study(int right) {
        List<Judgement> judgements = new ArrayList<>();
        for (int item = 0; item < 50; item++) {
            boolean truth = item < 25;
            for (int trial = 0; trial < 3; trial++) {
                boolean wrong = trial == 0 && item >= right;
                judgements.add(new Judgement("item " + item, "A", truth != wrong, truth));
            }
        }
        return judgements;
    }

    @Test
    void misses_and_false_alarms_are_shares_of_judgements() {
        AttributeStudy study = AttributeStudy.of(study(40), 0.95);
        AttributeStudy.Reader reader = study.readers().get("A");
        assertThat(reader.misses().getAsDouble()).isZero();
        assertThat(reader.falseAlarms().getAsDouble()).isEqualTo(10 / 75d, within(1e-12));
        assertThat(reader.consistency().estimate()).isEqualTo(0.8);
        assertThat(study.system()).isEqualTo(reader.effectiveness());
    }

    @Test
    void an_item_with_two_references_is_named() {
        List<Judgement> two = List.of(new Judgement("7", "A", true, true), new Judgement("7", "B", true, false));
        assertThatThrownBy(() -> AttributeStudy.of(two, 0.95))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.row()).hasValue(1));
        assertThatThrownBy(() -> AttributeStudy.of(List.of(), 0.95)).isInstanceOf(NoAnswer.class);
    }
}
