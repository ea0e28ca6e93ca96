package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.junit.jupiter.api.Test;

class RailTest {
    private static final int PLACES = 13;

    @Test
    void all_places_are_whole_in_a_low_window_and_roomy_in_a_high_one() {
        try (OpenDesk desk = open()) {
            desk.window().shell().setSize(1200, 800);
            desk.settle();
            assertThat(items(desk)).hasSize(PLACES).allMatch(InWindow::whole);
            assertThat(items(desk)).allMatch(item -> item.getSize().y == RailItem.HEIGHT);
            desk.window().shell().setSize(1200, 560);
            desk.settle();
            assertThat(items(desk)).allMatch(InWindow::whole);
            assertThat(items(desk)).allMatch(item -> item.getSize().y >= RailItem.LOW);
        }
    }

    @Test
    void where_they_cannot_all_be_whole_the_keyboard_brings_each_into_view() {
        try (OpenDesk desk = open()) {
            desk.window().shell().setSize(1200, 560);
            desk.window().look(Looks.FIRST.withPercent(200));
            desk.settle();
            RailItem last = items(desk).get(PLACES - 1);
            assertThat(InWindow.whole(last)).isFalse();
            desk.press(SWT.F6, SWT.NONE);
            desk.press(SWT.ARROW_UP, SWT.NONE);
            assertThat((Control) last).isSameAs(last.getDisplay().getFocusControl());
            assertThat(InWindow.whole(last)).isTrue();
            desk.press(SWT.ARROW_DOWN, SWT.NONE);
            assertThat(InWindow.whole(items(desk).get(0))).isTrue();
        }
    }

    private static List<RailItem> items(OpenDesk desk) {
        return InWindow.all(desk.window().shell(), RailItem.class).toList();
    }

    private static OpenDesk open() {
        Places places = new Places();
        for (int i = 0; i < PLACES; i++) {
            Offer.add(places, "page-" + i, i, new PlainPage("Page " + i));
        }
        return new OpenDesk(places);
    }
}
