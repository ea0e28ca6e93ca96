package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;

class StripDrawingTest {
    private final Ui ui = new Ui();
    private StripDrawing strip;

    @BeforeEach
    void showStrip() {
        strip = new StripDrawing(ui.shell(), ui.theme(), StripSize.LARGE);
        strip.strip(Format.SANDWICH_HOOK, Map.of(LineRole.CONTROL, "K"));
        strip.editable(true);
        ui.open();
    }

    @AfterEach
    void closeWindow() {
        ui.close();
    }

    @Test
    void startsUnanswered() {
        assertThat(strip.answers()).isEmpty();
        assertThat(strip.complete()).isFalse();
        assertThat(voice())
                .isEqualTo("Strip: Control line K, Not answered yet; Hook line H, Not answered yet; "
                        + "Test line T, Not answered yet");
    }

    @Test
    void isAnsweredFromTheKeyboardLineByLine() {
        List<String> heard = new ArrayList<>();
        strip.onAnswer(
                (role, seen) -> heard.add(role + "=" + seen.map(Seen::name).orElse("?")));
        ui.press(strip, 's');
        ui.press(strip, 'n');
        ui.press(strip, 'F');
        assertThat(strip.complete()).isTrue();
        assertThat(strip.answers())
                .isEqualTo(
                        Map.of(LineRole.CONTROL, Seen.SEEN, LineRole.HOOK, Seen.NOT_SEEN, LineRole.TEST, Seen.FAINT));
        assertThat(heard).containsExactly("CONTROL=SEEN", "HOOK=NOT_SEEN", "TEST=FAINT");
        assertThat(voice()).contains("Hook line H, Not seen", "Test line T, Faint");
    }

    @Test
    void letsOneGoBackAndAnswerAnew() {
        ui.press(strip, 's');
        ui.press(strip, SWT.ARROW_UP, (char) 0, SWT.NONE);
        assertThat(strip.line()).isEqualTo(LineRole.CONTROL);
        ui.press(strip, SWT.DEL, SWT.DEL, SWT.NONE);
        assertThat(strip.answers()).isEmpty();
        ui.press(strip, 'd');
        assertThat(strip.answers()).isEqualTo(Map.of(LineRole.CONTROL, Seen.DAMAGED));
    }

    @Test
    void leavesKeysWithControlOrAltToOthers() {
        ui.press(strip, 's', 's', SWT.CTRL);
        ui.press(strip, 's', 's', SWT.ALT);
        assertThat(strip.answers()).isEmpty();
    }

    @Test
    void isOnlyLookedAtUnlessEditable() {
        strip.editable(false);
        ui.press(strip, 's');
        assertThat(strip.answers()).isEmpty();
    }

    @Test
    void onlyTakesTheFocusAtAClickFromElsewhere() {
        Text elsewhere = new Text(ui.shell(), SWT.NONE);
        ui.shell().layout();
        elsewhere.setFocus();
        click(LineRole.CONTROL);
        assertThat(strip.isFocusControl()).isTrue();
        assertThat(strip.answers()).isEmpty();
    }

    @Test
    void pointsAtTheFirstClickAndAnswersFromTheSecondOn() {
        click(LineRole.TEST);
        assertThat(strip.line()).isEqualTo(LineRole.TEST);
        assertThat(strip.answers()).isEmpty();
        click(LineRole.TEST);
        assertThat(strip.answers()).isEqualTo(Map.of(LineRole.TEST, Seen.SEEN));
        for (int i = 0; i < 4; i++) {
            click(LineRole.TEST);
        }
        assertThat(strip.answers()).isEmpty();
    }

    @Test
    void everyLineIsSeenAndAnsweredInALowRoom() {
        strip.setSize(strip.getSize().x, strip.minimumHeight());

        assertThat(StripPainter.row(strip, ui.theme(), LineRole.TEST))
                .satisfies(row -> assertThat(row.y + row.height).isLessThanOrEqualTo(strip.minimumHeight()));
        click(LineRole.TEST);
        click(LineRole.TEST);
        assertThat(strip.answers()).isEqualTo(Map.of(LineRole.TEST, Seen.SEEN));
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void forgetsItsAnswersWhenAnotherStripIsShown(Format format) {
        ui.press(strip, 's');
        strip.strip(format, Map.of());
        assertThat(strip.answers()).isEmpty();
        assertThat(strip.line()).isEqualTo(LineRole.CONTROL);
    }

    @Test
    void drawsEachStateOfALineDifferently() {
        List<List<Integer>> pictures = new ArrayList<>();
        strip.answers(Map.of());
        pictures.add(testLine());
        for (Seen seen : Seen.values()) {
            strip.answers(Map.of(LineRole.TEST, seen));
            pictures.add(testLine());
        }
        assertThat(pictures).doesNotHaveDuplicates().hasSize(5);
    }

    /** Returns the pixels of the test line as painted. */
    private List<Integer> testLine() {
        Image image = new Image(ui.shell().getDisplay(), strip.getSize().x, strip.getSize().y);
        GC gc = new GC(image);
        new StripPainter(gc, ui.theme(), strip).paint();
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        Box box = StripPlan.of(StripSize.LARGE, 3).line(2);
        List<Integer> pixels = new ArrayList<>();
        for (int y = (int) box.top() - 6; y < box.bottom() + 6; y++) {
            for (int x = (int) box.left(); x < box.right(); x++) {
                pixels.add(data.getPixel(x, y));
            }
        }
        return pixels;
    }

    private void click(LineRole role) {
        Event event = new Event();
        var row = StripPainter.row(strip, ui.theme(), role);
        event.x = row.x + row.width / 2;
        event.y = row.y + row.height / 2;
        event.button = 1;
        strip.notifyListeners(SWT.MouseDown, event);
    }

    private String voice() {
        return new StripReaderVoice(strip).whole();
    }
}
