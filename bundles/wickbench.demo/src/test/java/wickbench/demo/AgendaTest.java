package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class AgendaTest {
    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");
    private final Agenda agenda = new Agenda();
    private final List<String> happened = new ArrayList<>();

    @Test
    void things_happen_in_order_of_time_and_then_of_planning() {
        agenda.at(NOON.plusSeconds(60), () -> happened.add("later"));
        agenda.at(NOON, () -> happened.add("first"));
        agenda.at(NOON, () -> {
            happened.add("second");
            agenda.at(NOON.plusSeconds(30), () -> happened.add("planned meanwhile"));
        });

        while (agenda.has(NOON.plusSeconds(61))) {
            agenda.step();
        }

        assertThat(happened).containsExactly("first", "second", "planned meanwhile", "later");
    }

    @Test
    void the_end_itself_is_not_reached() {
        agenda.at(NOON, () -> happened.add("at the end"));

        assertThat(agenda.has(NOON)).isFalse();
        assertThat(agenda.next()).isEqualTo(NOON);
    }
}
