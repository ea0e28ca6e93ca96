package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ShortWordsTest {
    private Display display;
    private GC gc;

    @BeforeEach
    void open() {
        display = new Display();
        gc = new GC(display);
    }

    @AfterEach
    void close() {
        gc.dispose();
        display.dispose();
    }

    @Test
    void wordsThatFitStayAsTheyAre() {
        assertThat(ShortWords.fitting(gc, "two lines", width("two lines"))).isEqualTo("two lines");
    }

    @Test
    void endBehindAWholeWordWhereThatFillsMostOfTheRoom() {
        assertThat(ShortWords.fitting(gc, "hold line and product", width("hold line and prod\u2026")))
                .isEqualTo("hold line and \u2026");
    }

    @Test
    void endInsideALongWordThatWouldLeaveMostOfTheRoomEmpty() {
        assertThat(ShortWords.fitting(gc, "Milk demonstration kit", width("Milk demonstrat\u2026")))
                .isEqualTo("Milk demonstrat\u2026");
    }

    @Test
    void inAnyRoomTheyFitAndAreABeginning() {
        String text = "Gluten demonstration kit, two lines and a hook line";
        for (int room = width("G\u2026"); room < width(text); room++) {
            String shown = ShortWords.fitting(gc, text, room);
            assertThat(width(shown)).as(shown).isLessThanOrEqualTo(room);
            assertThat(shown).endsWith("\u2026");
            assertThat(text).startsWith(shown.replace("\u2026", "").stripTrailing());
        }
    }

    private int width(String text) {
        return gc.textExtent(text).x;
    }
}
