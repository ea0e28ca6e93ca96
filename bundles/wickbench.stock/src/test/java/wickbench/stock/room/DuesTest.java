package wickbench.stock.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.LOT;
import static wickbench.stock.room.StockHome.START;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.progress.Progress;
import wickbench.stock.Due.What;
import wickbench.stock.LogShape;

/** What is due of fridges; what is due of lots stands beside their life. */
class DuesTest {
    @TempDir
    private Path folder;

    private StockHome home;

    @BeforeEach
    void open() {
        home = new StockHome(folder.resolve("home")).furnished();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void a_fridge_that_was_out_of_its_range_at_its_last_reading_is_due_first() throws IOException {
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofDays(1));
        log(START, i -> i < 20 ? 5 : 9.5);
        assertThat(due()).startsWith(tuple(What.OUTSIDE, "F1")).contains(tuple(What.DECIDE, "HZ-1"));

        home.after(Duration.ofDays(1));
        log(START.plus(Duration.ofHours(5)), i -> 5);
        assertThat(due()).doesNotContain(tuple(What.OUTSIDE, "F1")).contains(tuple(What.DECIDE, "HZ-1"));
    }

    @Test
    void an_empty_fridge_may_be_as_warm_as_it_likes() throws IOException {
        home.after(Duration.ofDays(1));
        log(START, i -> 20);
        assertThat(due()).isEmpty();
    }

    @Test
    void of_a_thermometer_with_memory_nobody_knows_how_it_stands_now() {
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofDays(1));
        home.fridges.measured("F1", START, home.clock.instant(), new BigDecimal("5"), new BigDecimal("20"), KEEPER);
        assertThat(due()).contains(tuple(What.DECIDE, "HZ-1")).doesNotContain(tuple(What.OUTSIDE, "F1"));
    }

    @Test
    void a_week_without_a_reading_is_due_from_the_day_on_which_it_is_over() throws IOException {
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofDays(1));
        log(START, i -> 5);
        home.after(Duration.ofDays(5));
        assertThat(due()).doesNotContain(tuple(What.LOGGER, "F1"));
        home.after(Duration.ofDays(1));
        assertThat(due()).contains(tuple(What.LOGGER, "F1"));
    }

    private List<Tuple> due() {
        return home.room.due(home.clock.instant(), 14).stream()
                .map(each -> tuple(each.what(), each.subject()))
                .toList();
    }

    /** Thirty readings, ten minutes apart. */
    private void log(Instant from, IntToDoubleFunction celsius) throws IOException {
        StringBuilder text = new StringBuilder("time;°C\n");
        for (int i = 0; i < 30; i++) {
            text.append(from.plus(Duration.ofMinutes(10L * i)))
                    .append(';')
                    .append(celsius.applyAsDouble(i))
                    .append('\n');
        }
        Path file = Files.writeString(folder.resolve("log-" + from.getEpochSecond() + ".csv"), text);
        home.fridges.read(file, "F1", LogShape.UNSAID, Progress.NONE, KEEPER);
    }
}
