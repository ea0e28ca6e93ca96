package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.Test;

class FirstStepsInRailTest {
    private volatile List<FirstStep> steps = List.of(step(true), step(false));

    @Test
    void leaves_the_rail_when_every_step_is_done_and_can_still_be_gone_to() {
        try (OpenDesk desk = open()) {
            assertThat(rail(desk)).containsExactly("bench", StartPage.PLACE);
            steps = List.of(step(true), elsewhere());
            desk.window().tellDue();
            desk.await(() -> !rail(desk).contains(StartPage.PLACE));
            desk.press('f', SWT.ALT | SWT.SHIFT);
            assertThat(desk.front().id()).isEqualTo(StartPage.PLACE);
            assertThat(rail(desk)).containsExactly("bench", StartPage.PLACE);
            desk.show("bench", Optional.empty());
            assertThat(rail(desk)).containsExactly("bench");
        }
    }

    @Test
    void comes_back_when_a_part_brings_further_steps() {
        steps = List.of(step(true));
        try (OpenDesk desk = open()) {
            desk.window().tellDue();
            desk.await(() -> !rail(desk).contains(StartPage.PLACE));
            steps = List.of(step(true), step(false));
            Offer.add(desk.supplies().places(), "plant", 20, new PlainPage("&Plant"));
            desk.await(() -> rail(desk).contains(StartPage.PLACE));
            assertThat(rail(desk)).containsExactly("bench", "plant", StartPage.PLACE);
        }
    }

    @Test
    void stays_while_something_is_left_or_nobody_knows() {
        for (List<FirstStep> known : List.of(List.of(step(true), step(false)), List.<FirstStep>of())) {
            steps = known;
            try (OpenDesk desk = open()) {
                desk.window().tellDue();
                desk.await(() -> !desk.window().board().awaited());
                desk.settle();
                assertThat(rail(desk)).containsExactly("bench", StartPage.PLACE);
            }
        }
    }

    private OpenDesk open() {
        Neighbours neighbours = new Neighbours();
        neighbours.firstSteps(() -> steps);
        Places places = new Places();
        Offer.add(places, "bench", 10, new PlainPage("&Bench"));
        Offer.add(places, StartPage.PLACE, 99, new StartPage());
        return new OpenDesk(places, neighbours);
    }

    private static List<String> rail(OpenDesk desk) {
        Stream<RailItem> items = InWindow.all(desk.window().shell(), RailItem.class);
        return items.map(RailItem::id).toList();
    }

    private static FirstStep step(boolean done) {
        return new FirstStep(10, "Step", "why", done, "bench", "");
    }

    /** A step on a page that is not installed is nobody's here. */
    private static FirstStep elsewhere() {
        return new FirstStep(20, "Elsewhere", "why", false, "absent", "");
    }
}
