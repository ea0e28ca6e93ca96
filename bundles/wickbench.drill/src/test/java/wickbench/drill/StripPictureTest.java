package wickbench.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.figures.NoAnswer;

/** The contrast of what is drawn, measured from the codes that go to the screen. */
class StripPictureTest {
    private static final StripWindow WINDOW = new StripWindow(8);

    /** IEC 61966-2-1; the values from the standard's formula, computed in R 4.2.2. */
    @ParameterizedTest
    @CsvSource({"0, 0", "10, 0.003035", "11, 0.003347", "128, 0.215861", "188, 0.502886", "255, 1"})
    void codes_give_light(int code, double light) {
        assertThat(Srgb.light(code)).isEqualTo(light, within(5.1e-7));
        assertThat(Srgb.below(Srgb.light(code))).isEqualTo(code);
        assertThat(Srgb.below(Srgb.light(code) - 1e-9)).isEqualTo(Math.max(0, code - 1));
    }

    /** One step of the codes here is about 0.9 % of the light: contrasts below it are drawn too. */
    @ParameterizedTest
    @ValueSource(doubles = {0.002, 0.004, 0.008, 0.02, 0.05, 0.2, 0.4})
    void the_test_line_has_the_contrast_asked_for(double contrast) {
        double mean = IntStream.range(0, 60)
                .mapToDouble(seed -> measured(contrast, seed))
                .peek(one -> assertThat(one).isEqualTo(contrast, within(0.001)))
                .average()
                .orElseThrow();
        assertThat(mean).isEqualTo(contrast, within(0.0001));
    }

    /** Without rounding by chance, a line of less than half a step would vanish or be a whole step deep in places. */
    @Test
    void a_code_step_is_larger_than_the_faintest_line() {
        int code = Srgb.below(Optics.USUAL.green());
        assertThat(1 - Srgb.light(code - 1) / Srgb.light(code)).isGreaterThan(4 * DrillPlan.FAINTEST);
    }

    @Test
    void no_line_has_no_contrast_and_the_control_line_is_plain() {
        StripPicture blank = StripPicture.draw(Optics.USUAL, WINDOW, 0, 11);
        double control = row(blank, WINDOW.control() + WINDOW.line() / 2);
        double membrane = row(blank, WINDOW.control() - 2 * WINDOW.line());
        assertThat(1 - control / membrane).isBetween(0.3, 0.45);
        assertThat(measured(0, 11)).isZero();
    }

    /** The line takes green light most, as gold does, and no colour is cut off at white. */
    @Test
    void colours_are_those_of_a_gold_line_on_white() {
        byte[] codes = StripPicture.draw(Optics.USUAL, WINDOW, 0.3, 2).codes();
        int at = ((WINDOW.test() + 4) * WINDOW.width() + 20) * 3;
        assertThat(codes[at] & 0xFF).isGreaterThan(codes[at + 2] & 0xFF);
        assertThat(codes[at + 2] & 0xFF).isGreaterThan(codes[at + 1] & 0xFF);
        for (byte code : codes) {
            assertThat(code & 0xFF).isBetween(60, 252);
        }
    }

    /** The spread of texture and light is what the model says: gradient apart, the grain of each point and the mottle of patches. */
    @Test
    void texture_has_the_spread_stated() {
        Optics flat = new Optics(0.76, 0.76, 0.73, Optics.USUAL.dye(), 0.02, 0, 0, 0.15, 0.35);
        assertThat(spread(flat, new StripWindow(16))).isEqualTo(0.02, within(0.001));
        Optics patchy = new Optics(0.76, 0.76, 0.73, Optics.USUAL.dye(), 0, 0.02, 0, 0.15, 0.35);
        double mean = Math.sqrt(IntStream.range(0, 400)
                .mapToDouble(seed -> Math.pow(Texture.of(patchy, WINDOW, seed).at(20, 100) - 1, 2))
                .average()
                .orElseThrow());
        assertThat(mean).isEqualTo(0.02, within(0.004));
    }

    @Test
    void a_seed_draws_the_same_again() {
        assertThat(StripPicture.draw(Optics.USUAL, WINDOW, 0.02, 5).codes())
                .isEqualTo(StripPicture.draw(Optics.USUAL, WINDOW, 0.02, 5).codes())
                .isNotEqualTo(StripPicture.draw(Optics.USUAL, WINDOW, 0.02, 6).codes());
    }

    @Test
    void what_cannot_be_drawn_is_refused() {
        assertThatThrownBy(() -> StripPicture.draw(Optics.USUAL, WINDOW, 0.6, 1))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new StripWindow(2)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new Optics(0.99, 0.99, 0.99, Optics.USUAL.dye(), 0.02, 0.02, 0.04, 0.15, 0.35))
                .isInstanceOf(NoAnswer.class);
    }

    private static double measured(double contrast, long seed) {
        double line = StripPicture.draw(Optics.USUAL, WINDOW, contrast, seed).testLine();
        double bare = StripPicture.draw(Optics.USUAL, WINDOW, 0, seed).testLine();
        return (bare - line) / bare;
    }

    private static double row(StripPicture picture, int y) {
        return IntStream.range(0, picture.width())
                .mapToDouble(x -> picture.luminance(x, y))
                .average()
                .orElseThrow();
    }

    private static double spread(Optics optics, StripWindow window) {
        Texture texture = Texture.of(optics, window, 1);
        return Math.sqrt(IntStream.range(0, window.height())
                .mapToDouble(y -> IntStream.range(0, window.width())
                        .mapToDouble(x -> Math.pow(texture.at(x, y) - 1, 2))
                        .average()
                        .orElseThrow())
                .average()
                .orElseThrow());
    }
}
