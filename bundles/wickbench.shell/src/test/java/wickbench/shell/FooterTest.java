package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FooterTest {
    private static final String MUCH = "Recorded, and many words more of it. ".repeat(30);

    @Test
    void no_page_jumps_when_something_is_said_or_work_takes_long() {
        try (OpenDesk desk = open(1280)) {
            Rectangle before = desk.front().box().getBounds();
            desk.window().say(MUCH);
            assertThat(desk.front().box().getBounds()).isEqualTo(before);
            work(desk, "Weighing");
            desk.await(() -> inSight(desk, "Weighing"));
            assertThat(desk.front().box().getBounds()).isEqualTo(before);
            assertThat(inSight(desk, MUCH)).isFalse();
        }
    }

    @Test
    void what_was_said_comes_back_when_the_work_is_done() {
        try (OpenDesk desk = open(1280)) {
            desk.window().say("Recorded.");
            RunningJob<String> job = work(desk, "Weighing");
            desk.await(() -> inSight(desk, "Weighing"));
            desk.window().board().ended(job);
            desk.await(() -> inSight(desk, "Recorded.") && !inSight(desk, "Weighing"));
        }
    }

    @ParameterizedTest
    @CsvSource({"800, 100", "1280, 100", "1920, 100", "1280, 150", "800, 200"})
    void the_caution_is_whole_whatever_is_said_beside_it(int width, int percent) {
        try (OpenDesk desk = open(width)) {
            desk.window().look(Looks.FIRST.withPercent(percent));
            desk.settle();
            for (String said : new String[] {"", "Recorded.", MUCH}) {
                desk.window().say(said);
                desk.settle();
                Label caution = label(desk, ShellWords.get("caution"));
                assertThat(InWindow.whole(caution)).isTrue();
                assertThat(caution.getSize().y).isGreaterThanOrEqualTo(caution.computeSize(caution.getSize().x, -1).y);
            }
        }
    }

    private static OpenDesk open(int width) {
        Places places = new Places();
        Offer.add(places, "bench", 10, new PlainPage("&Bench"));
        OpenDesk desk = new OpenDesk(places);
        desk.window().shell().setSize(width, 700);
        desk.settle();
        return desk;
    }

    /** Puts work on the board that never ends by itself. */
    private static RunningJob<String> work(OpenDesk desk, String what) {
        RunningJob<String> job =
                new RunningJob<>(what, progress -> what, text -> {}, failure -> {}, (result, end) -> {});
        desk.window().board().started(job);
        return job;
    }

    private static boolean inSight(OpenDesk desk, String words) {
        return InWindow.all(desk.window().shell(), Label.class)
                .anyMatch(label -> label.getText().equals(words) && label.isVisible());
    }

    private static Label label(OpenDesk desk, String words) {
        return InWindow.all(desk.window().shell(), Label.class)
                .filter(label -> label.getText().equals(words))
                .findFirst()
                .orElseThrow();
    }
}
