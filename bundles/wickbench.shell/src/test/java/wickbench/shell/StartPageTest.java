package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.Test;
import wickbench.widgets.Badge;
import wickbench.widgets.Note;

class StartPageTest {
    private final PlainPage bench = new PlainPage("&Bench");
    private boolean enrolled;

    @Test
    void ticks_what_is_done_and_leads_on_to_the_next() {
        enrolled = true;
        try (OpenDesk desk = open()) {
            assertThat(marks(desk)).containsExactly("Done", "Next", "To do");
            Button next = buttons(desk).get(1);
            assertThat(next.isFocusControl()).isTrue();
            next.notifyListeners(SWT.Selection, new Event());
            desk.settle();
            assertThat(desk.front().id()).isEqualTo("bench");
            assertThat(bench.heard()).contains("show F1");
        }
    }

    @Test
    void looks_again_when_something_was_recorded() {
        try (OpenDesk desk = open()) {
            assertThat(marks(desk)).containsExactly("Next", "To do", "To do");
            enrolled = true;
            desk.window().newsCame();
            desk.await(() -> desk.front().settled());
            assertThat(marks(desk)).containsExactly("Done", "Next", "To do");
        }
    }

    @Test
    void leaves_out_what_leads_to_a_page_that_is_not_installed() {
        try (OpenDesk desk = open()) {
            assertThat(buttons(desk)).hasSize(3);
        }
    }

    @Test
    void says_so_when_nothing_is_left() {
        try (OpenDesk desk = open(() -> List.of(step(10, "Only", true, "bench")))) {
            assertThat(all(desk.front().box(), Note.class).map(Note::said))
                    .containsExactly(ShellWords.get("first.all-done"));
        }
    }

    private OpenDesk open() {
        return open(() -> List.of(
                step(30, "Third", false, "bench"),
                step(10, "First", enrolled, "bench"),
                step(40, "Elsewhere", false, "absent"),
                step(20, "Second", false, "bench")));
    }

    private OpenDesk open(FirstSteps steps) {
        StartPage page = new StartPage();
        page.source(steps);
        Places places = new Places();
        Offer.add(places, "bench", 10, bench);
        Offer.add(places, StartPage.PLACE, 99, page);
        OpenDesk desk = new OpenDesk(places);
        desk.show(StartPage.PLACE, Optional.empty());
        desk.await(() -> desk.front().settled());
        desk.settle();
        return desk;
    }

    private static FirstStep step(int order, String title, boolean done, String page) {
        return new FirstStep(order, title, "why", done, page, "F1");
    }

    private static List<String> marks(OpenDesk desk) {
        return all(desk.front().box(), Badge.class)
                .map(badge -> badge.shown().word())
                .toList();
    }

    private static List<Button> buttons(OpenDesk desk) {
        return all(desk.front().box(), Button.class).toList();
    }

    private static <C extends Control> Stream<C> all(Composite in, Class<C> type) {
        return Stream.of(in.getChildren())
                .flatMap(child -> Stream.concat(
                        Stream.of(child).filter(type::isInstance).map(type::cast),
                        child instanceof Composite inner ? all(inner, type) : Stream.empty()));
    }
}
