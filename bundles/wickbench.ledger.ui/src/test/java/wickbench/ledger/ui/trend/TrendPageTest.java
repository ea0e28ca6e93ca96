package wickbench.ledger.ui.trend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.testing.Meets;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;
import wickbench.widgets.ChartView;

/** The page of the trend by real keys: signals in words, what is behind them, and limits frozen by a signed entry. */
class TrendPageTest {
    @TempDir
    Path folder;

    private TrendHouse house;
    private TestDesk desk;
    private Keyboard keys;
    private TrendPart page;

    @BeforeEach
    void open() throws IOException {
        house = new TrendHouse(folder, 0, 1, 0, 0, 1, 0, 0, 0, 3, 3);
        desk = new TestDesk(false, 100, 1180, 900, Optional.of(TrendHouse.RUI));
        keys = new Keyboard(desk);
        page = desk.open(parent -> new TrendPart(parent, desk, house.doors()));
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    /** 8 of 40: 0.2 + 3√(0.2·0.8/4) = 0.8, so nothing is out; frozen over eight weeks, 2 of 32: 0.0625 + 3·0.1210307 = 0.4256 (Montgomery, chapter 7). */
    @Test
    @Meets("ISO 22000 9.1.2")
    void limits_frozen_by_a_signed_entry_show_what_has_changed_since() throws IOException {
        assertThat(seen().words()).anyMatch(text -> text.startsWith("Limits follow what is shown"));
        assertThat(seen().words()).noneMatch(text -> text.startsWith("2026-03-02: "));

        field("Freeze from").setFocus();
        keys.type("2026-01-05");
        keys.tab();
        keys.type("2026-13-01");
        seen().press("Freeze the limits…");
        assertThat(seen().words()).anyMatch(text -> text.startsWith("expected a day such as 2026-03-05, found"));
        field("to").setFocus();
        ((org.eclipse.swt.widgets.Text) field("to")).selectAll();
        keys.type("2026-03-01");
        seen().press("Freeze the limits…");
        Shell sheet = desk.shell().getShells()[0];
        desk.await(sheet::isVisible);
        keys.type("in order after validation");
        keys.tab();
        keys.type(TrendHouse.RUIS);
        keys.enter();
        desk.await(sheet::isDisposed);
        desk.await(() -> seen().words().stream()
                .anyMatch(text -> text.equals("Frozen over 2026-01-05 to 2026-03-01: in order after validation")));
        desk.await(() -> seen().words().stream().anyMatch(text -> text.startsWith("2026-03-02: ")));
        desk.await(() -> seen().all(ChartView.class).stream().allMatch(ChartView::settled));
        desk.picture("trend");

        seen().press("Its strips");
        desk.await(() -> page.behind().filter(kit -> !kit.rows().isEmpty()).isPresent());
        assertThat(page.behind().orElseThrow().rows()).hasSize(4);
        assertThat(seen().words()).contains("Week from 2026-03-02: 4 first tests, 3 counted.");
        desk.shell().forceActive();
        desk.await(() -> !page.behind().orElseThrow().selected().isEmpty());
        page.behind().orElseThrow().focus();
        keys.enter();
        desk.await(() -> desk.said().stream().anyMatch(text -> text.startsWith("page ledger at ")));
        desk.picture("trend-behind");
    }

    @Test
    void the_map_and_the_chart_lead_to_the_strips_by_keys() throws IOException {
        assertThat(page.bar().method().getItems()).containsExactly("All methods", "hazelnut-rinse");
        assertThat(seen().words()).containsSequence("Which points find most", "L1 mixer blade", "6 of 20, 30.0 %");
        HeatMap map = seen().all(HeatMap.class).get(0);
        page.left().reveal(map);
        map.setFocus();
        assertThat(map.says()).startsWith("L1 mixer blade, week from 2026-03-09: ");
        keys.key(SWT.ARROW_DOWN);
        keys.key(SWT.ARROW_LEFT);
        assertThat(map.says()).startsWith("L1 belt underside, week from 2026-03-02: 1/2");
        keys.enter();
        desk.await(() -> page.behind().filter(kit -> kit.rows().size() == 2).isPresent());

        page.charts().setFocus();
        keys.type("4");
        desk.await(() -> seen().words().stream().anyMatch(text -> text.contains("Benneyan")));
        ChartView chart = seen().all(ChartView.class).get(0);
        desk.await(chart::settled);
        chart.setFocus();
        keys.key(SWT.ARROW_RIGHT);
        keys.enter();
        desk.await(() -> desk.said().stream().anyMatch(text -> text.startsWith("page ledger at ")));
    }

    @Test
    void a_day_that_is_none_is_told_in_one_line_and_a_line_without_tests_has_no_chart() {
        page.bar().from().setFocus();
        keys.type("yesterday");
        keys.enter();
        desk.await(() -> seen().words().stream()
                .anyMatch(text -> text.equals("expected a day such as 2026-03-05, found ‘yesterday’")));

        page.bar().from().selectAll();
        keys.type("2031-01-01");
        keys.enter();
        desk.await(() -> seen().words().stream().anyMatch(text -> text.startsWith("Nothing to show yet")));
    }

    private Control field(String label) {
        List<Control> all = seen().all(Control.class);
        int at = 0;
        while (!(all.get(at) instanceof Label words && words.getText().equals(label))) {
            at++;
        }
        return all.get(at + 1);
    }

    private Seen seen() {
        return new Seen(desk.shell());
    }
}
