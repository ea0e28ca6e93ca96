package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Contrast as WCAG 2.2 (W3C Recommendation, 2023) defines it: "relative luminance" and "contrast ratio". */
class PaletteTest {
    /** Success criterion 1.4.3, level AA, for words. */
    private static final double WORDS = 4.5;
    /** Success criterion 1.4.11 for shapes and the edges of controls. */
    private static final double SHAPES = 3.0;

    static Stream<Palette> palettes() {
        return Stream.of(Palette.ofLight(), Palette.ofDark());
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void wordsCanBeReadOnEveryGroundThatTheyStandOn(Palette palette) {
        List<RGB> grounds = List.of(
                palette.ground(),
                palette.surface(),
                palette.field(),
                palette.raised(),
                palette.button(),
                palette.stripe());
        for (RGB ground : grounds) {
            assertThat(contrast(palette.ink(), ground)).as("ink on %s", ground).isGreaterThanOrEqualTo(WORDS);
            assertThat(contrast(palette.quiet(), ground))
                    .as("quiet on %s", ground)
                    .isGreaterThanOrEqualTo(WORDS);
        }
        assertThat(contrast(palette.onAccent(), palette.accent())).isGreaterThanOrEqualTo(WORDS);
        assertThat(contrast(palette.onSelection(), palette.selection())).isGreaterThanOrEqualTo(WORDS);
        assertThat(contrast(palette.ink(), palette.selection())).isGreaterThanOrEqualTo(WORDS);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void meaningsCanBeReadOnTheirWashOnSurfacesAndOnSelectedRows(Palette palette) {
        for (Meaning meaning : Meaning.values()) {
            Tone tone = palette.tone(meaning);
            for (RGB ground : List.of(tone.wash(), palette.surface(), palette.ground(), palette.selection())) {
                assertThat(contrast(tone.ink(), ground))
                        .as("%s on %s", meaning, ground)
                        .isGreaterThanOrEqualTo(WORDS);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void theFocusRingStandsOutOnEveryGround(Palette palette) {
        for (RGB ground : List.of(palette.ground(), palette.surface(), palette.raised(), palette.selection())) {
            assertThat(contrast(palette.accent(), ground)).as("%s", ground).isGreaterThanOrEqualTo(SHAPES);
        }
    }

    @Test
    void theFormulaGivesTheValuesOfItsDefinition() {
        // WCAG 2.2: black on white is 21 to 1, a colour on itself 1 to 1
        assertThat(contrast(new RGB(0, 0, 0), new RGB(255, 255, 255))).isEqualTo(21.0);
        assertThat(contrast(new RGB(10, 20, 30), new RGB(10, 20, 30))).isEqualTo(1.0);
    }

    private static double contrast(RGB one, RGB other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(RGB colour) {
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
