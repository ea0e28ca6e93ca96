package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page in a window, on a real home. */
class BenchPageTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;

    @BeforeEach
    void found() {
        house = new TestHouse(folder);
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void records_a_reading_by_keys_alone() throws Exception {
        desk = new TestDesk(false, 100, 1100, 720, Optional.of(TestHouse.ACTOR));
        house.withMethods();
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors()));
        desk.shell().forceActive();
        page.shown();
        Keyboard keys = new Keyboard(desk);
        long before = house.entries();
        keys.type("hazelnut-r");
        desk.picture("bench-list");
        keys.enter();
        keys.tab();
        keys.tab();
        keys.type("hz-1");
        keys.tab();
        keys.type("l2-04");
        keys.tab();
        keys.tab();
        keys.type("kettle");
        keys.key(SWT.F8);
        desk.picture("bench-started");
        assertThat(page.strip().view().form().text(Item.METHOD)).isEqualTo("hazelnut-rinse");
        assertThat(page.strip().view().form().text(Item.PLACE)).isEqualTo("kettle");
        page.strip().view().form().put(Item.STARTED, minutesAgo(6));
        keys.key(SWT.F9);
        keys.type("snn");
        desk.await(() -> page.strip().view().bar().said().equals(BenchUiWords.get("enter-records")));
        desk.picture("bench-judged");
        keys.enter();
        desk.await(() -> house.entries() == before + 1);
        desk.await(() -> !desk.said().isEmpty());
        desk.picture("bench-kept");
    }

    private String minutesAgo(int minutes) {
        return new SiteClock(house.doors().home().clock(), house.doors().zone())
                .whole(java.time.Instant.now().minusSeconds(60L * minutes - 20));
    }
}
