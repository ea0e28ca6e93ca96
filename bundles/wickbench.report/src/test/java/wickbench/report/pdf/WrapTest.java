package wickbench.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import wickbench.report.text.Typeface;

class WrapTest {
    private static final double SIZE = 8.5;
    private static final Face FACE = face();

    @Property
    void no_character_is_lost_and_no_line_is_too_wide(
            @ForAll String text, @ForAll @DoubleRange(min = 30, max = 300) double width) {
        String visible = FACE.visible().lines(text);
        List<String> lines = Wrap.lines(visible, FACE, SIZE, width);
        assertThat(withoutBlanks(String.join("", lines))).isEqualTo(withoutBlanks(visible));
        assertThat(lines).allMatch(line -> FACE.width(line, SIZE) <= width || isOneCharacter(line));
    }

    @Property
    void what_is_made_visible_can_be_drawn(@ForAll String text) {
        String line = FACE.visible().line(text);
        assertThat(FACE.visible().line(line)).as("nothing is left to be marked").isEqualTo(line);
    }

    @Property
    void a_line_is_cut_with_a_mark(@ForAll String text) {
        String cut = FACE.visible().atMost(text, 10);
        String whole = FACE.visible().line(text);
        assertThat(cut.codePointCount(0, cut.length())).isLessThanOrEqualTo(10);
        assertThat(cut.equals(whole) || cut.endsWith("…")).isTrue();
    }

    @Test
    void words_stay_whole_where_they_can() {
        assertThat(Wrap.lines("Depositor, nozzle plate", FACE, SIZE, 60)).containsExactly("Depositor,", "nozzle plate");
    }

    /** Blanks at the end of a line are not drawn. */
    private static String withoutBlanks(String text) {
        return text.replaceAll("[\\s\\p{Z}]", "");
    }

    private static boolean isOneCharacter(String line) {
        return line.codePoints()
                        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                        .count()
                <= 1;
    }

    private static Face face() {
        try {
            return new Face(new PDDocument(), Typeface.PLAIN);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
