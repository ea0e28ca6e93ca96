package wickbench.stock.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.lot.LotId;
import wickbench.shell.Due;
import wickbench.stock.Due.What;
import wickbench.widgets.Meaning;

/** What the stock room puts into the top bar. */
class StockDueTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-07-20");

    @TempDir
    private Path folder;

    @Test
    void a_lot_that_awaits_its_check_is_named_and_leads_to_it() {
        try (StockHouse house = new StockHouse(folder.resolve("home"))) {
            StockDue due = new StockDue(house.home(), house.doors().room());
            assertThat(due.due()).isEmpty();

            house.furnished().receive("HZ-1", "2027-03-31", StockHouse.START);
            assertThat(due.due())
                    .extracting(each -> each.mark().word(), each -> each.mark().meaning(), Due::page, Due::argument)
                    .contains(tuple("Lot HZ-1 awaits its check", Meaning.CAUTION, "stock", "lots:HZ-1"));

            house.receive("HZ-2", "2027-03-31", StockHouse.START);
            assertThat(due.due())
                    .extracting(each -> each.mark().word(), Due::argument)
                    .contains(tuple("2 lots await their check", "lots"));
            house.doors().keeping().quarantine(new LotId("HZ-2"), "wet", house.keeper());
            assertThat(due.due().get(0).mark().word()).isEqualTo("Lot HZ-2 in quarantine");
        }
    }

    @Test
    void every_sort_has_words_for_one_and_for_several_and_a_tab_that_there_is() {
        for (What what : What.values()) {
            Due one = StockDue.marks(List.of(due(what)), TODAY).get(0);
            assertThat(one.mark().word()).contains("X-1").doesNotContain("due.");
            String tab = one.argument().substring(0, one.argument().indexOf(':'));
            assertThat(Arrays.stream(Tab.values()).map(Tab::code)).contains(tab);
            Due two = StockDue.marks(List.of(due(what), due(what)), TODAY).get(0);
            assertThat(two.mark().word()).startsWith("2 ").doesNotContain("due.");
            assertThat(two.argument()).isEqualTo(tab);
        }
    }

    @Test
    void no_more_than_three_sorts_stand_there_and_the_most_urgent_are_those() {
        List<wickbench.stock.Due> all =
                Stream.of(What.values()).map(StockDueTest::due).toList();
        assertThat(StockDue.marks(all, TODAY))
                .extracting(each -> each.mark().meaning())
                .containsExactly(Meaning.ALARM, Meaning.CAUTION, Meaning.CAUTION);
    }

    @Test
    void a_calibration_that_is_over_is_more_than_one_to_come() {
        assertThat(meaning(What.CALIBRATE, TODAY)).isEqualTo(Meaning.NOTICE);
        assertThat(meaning(What.CALIBRATE, TODAY.plusDays(1))).isEqualTo(Meaning.CAUTION);
    }

    private static Meaning meaning(What what, LocalDate today) {
        return StockDue.marks(List.of(due(what)), today).get(0).mark().meaning();
    }

    private static wickbench.stock.Due due(What what) {
        return new wickbench.stock.Due(what, TODAY, "X-1", "about", 3);
    }
}
