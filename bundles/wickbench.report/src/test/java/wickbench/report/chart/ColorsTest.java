package wickbench.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.Arrays;
import java.util.HashSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColorsTest {

    /** Values of WCAG 2.2: black on white is 21 to 1; #767676 is the lightest grey that reaches 4.5 on white. */
    @Test
    void contrast_follows_the_published_formula() {
        assertThat(Contrast.ratio(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
        assertThat(Contrast.ratio(Color.WHITE, Color.WHITE)).isCloseTo(1, within(1e-9));
        assertThat(Contrast.ratio(new Color(0x767676), Color.WHITE)).isBetween(4.5, 4.6);
        assertThat(Contrast.ratio(new Color(0x777777), Color.WHITE)).isLessThan(4.5);
    }

    /** Okabe and Ito (2008) give their colours as red, green, blue from 0 to 255. */
    @Test
    void the_colours_are_those_published() {
        assertThat(Arrays.stream(OkabeIto.values()).map(OkabeIto::color))
                .containsExactlyInAnyOrder(
                        new Color(0, 0, 0),
                        new Color(230, 159, 0),
                        new Color(86, 180, 233),
                        new Color(0, 158, 115),
                        new Color(240, 228, 66),
                        new Color(0, 114, 178),
                        new Color(213, 94, 0),
                        new Color(204, 121, 167));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void words_and_marks_stand_out(boolean dark) {
        ChartColors colors = ChartColors.of(dark);
        assertThat(Contrast.ratio(colors.ink(), colors.ground())).isGreaterThanOrEqualTo(Contrast.OF_WORDS);
        assertThat(Contrast.ratio(colors.quiet(), colors.ground())).isGreaterThanOrEqualTo(Contrast.OF_WORDS);
        assertThat(colors.series())
                .hasSizeGreaterThanOrEqualTo(4)
                .allMatch(color -> Contrast.ratio(color, colors.ground()) >= Contrast.OF_MARKS);
    }

    @Test
    void a_series_keeps_its_hue_in_light_and_dark() {
        assertThat(ChartColors.of(false).series().subList(0, 3))
                .containsExactly(OkabeIto.BLUE.color(), OkabeIto.VERMILLION.color(), OkabeIto.BLUISH_GREEN.color());
        assertThat(ChartColors.of(true).series().subList(0, 3))
                .containsExactly(OkabeIto.SKY_BLUE.color(), OkabeIto.VERMILLION.color(), OkabeIto.BLUISH_GREEN.color());
    }

    @Test
    void ten_series_are_told_apart_without_colour() {
        ChartColors colors = ChartColors.of(false);
        var dashes = new HashSet<>();
        var shapes = new HashSet<>();
        for (int i = 0; i < 10; i++) {
            SeriesLook look = SeriesLook.of(i, colors);
            dashes.add(look.stroke());
            shapes.add(look.stroke().hashCode() + "/" + look.shape().getBounds2D() + look.color());
        }
        assertThat(dashes).hasSize(5);
        assertThat(shapes).hasSize(10);
    }
}
