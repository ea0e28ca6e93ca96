package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Contrast as WCAG 2.2 (W3C Recommendation, 2023) defines it: "relative luminance" and "contrast ratio".
 *
 * <p>What is disabled is exempt there (1.4.3, "Incidental"), and so are lines that only please, such as the edge of a card.
 */
class PaletteTest {
    /** Success criterion 1.4.3, level AA, for words. */
    private static final double WORDS = 4.5;
    /** Success criterion 1.4.11 for shapes and the edges of controls. */
    private static final double SHAPES = 3.0;
    /** The map of points by weeks goes from the wash of an alarm at most so far towards its ink. */
    private static final double DEEPEST_SHADE = 0.3;

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
        words(palette.onAccent(), palette.accent());
        words(palette.onSelection(), palette.selection());
        words(palette.ink(), palette.selection());
        words(palette.quiet(), palette.selection());
        // the digits of steps
        words(palette.accent(), palette.surface());
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void meaningsCanBeReadOnTheirWashOnSurfacesAndOnSelectedRows(Palette palette) {
        for (Meaning meaning : Meaning.values()) {
            Tone tone = palette.tone(meaning);
            for (RGB ground : List.of(
                    tone.wash(),
                    palette.surface(),
                    palette.ground(),
                    palette.raised(),
                    palette.stripe(),
                    palette.selection())) {
                assertThat(contrast(tone.ink(), ground))
                        .as("%s on %s", meaning, ground)
                        .isGreaterThanOrEqualTo(WORDS);
            }
            // bars and shapes, which the ink outlines, also stand on what is left of a bar
            assertThat(contrast(tone.ink(), palette.edge()))
                    .as("%s on the edge", meaning)
                    .isGreaterThanOrEqualTo(SHAPES);
            words(palette.ink(), tone.wash());
            words(palette.quiet(), tone.wash());
        }
        Tone alarm = palette.tone(Meaning.ALARM);
        words(palette.ink(), mixed(alarm.wash(), alarm.ink(), DEEPEST_SHADE));
    }

    @Test
    void theDrawnStripCanBeMadeOut() {
        assertThat(contrast(StripPainter.RIM, StripPainter.HOUSING)).isGreaterThanOrEqualTo(SHAPES);
        assertThat(contrast(StripPainter.RIM, StripPainter.MEMBRANE)).isGreaterThanOrEqualTo(SHAPES);
        assertThat(contrast(StripPainter.GHOST, StripPainter.MEMBRANE)).isGreaterThanOrEqualTo(SHAPES);
        assertThat(contrast(StripPainter.DYE, StripPainter.MEMBRANE)).isGreaterThanOrEqualTo(SHAPES);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void theFocusRingStandsOutOnEveryGround(Palette palette) {
        for (RGB ground : List.of(
                palette.ground(),
                palette.surface(),
                palette.raised(),
                palette.button(),
                palette.stripe(),
                palette.selection())) {
            assertThat(contrast(palette.accent(), ground)).as("%s", ground).isGreaterThanOrEqualTo(SHAPES);
        }
    }

    @Test
    void theFormulaGivesTheValuesOfItsDefinition() {
        // WCAG 2.2: black on white is 21 to 1, a colour on itself 1 to 1
        assertThat(contrast(new RGB(0, 0, 0), new RGB(255, 255, 255))).isEqualTo(21.0);
        assertThat(contrast(new RGB(10, 20, 30), new RGB(10, 20, 30))).isEqualTo(1.0);
    }

    private static void words(RGB ink, RGB ground) {
        assertThat(contrast(ink, ground)).as("%s on %s", ink, ground).isGreaterThanOrEqualTo(WORDS);
    }

    private static RGB mixed(RGB one, RGB other, double share) {
        return new RGB(
                (int) Math.round(one.red + (other.red - one.red) * share),
                (int) Math.round(one.green + (other.green - one.green) * share),
                (int) Math.round(one.blue + (other.blue - one.blue) * share));
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
