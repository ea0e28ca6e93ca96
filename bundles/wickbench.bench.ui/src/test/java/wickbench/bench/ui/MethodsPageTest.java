package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;
import wickbench.widgets.Badge;
import wickbench.widgets.StripDrawing;

/** The page of the methods, on a real home. */
class MethodsPageTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;

    @BeforeEach
    void found() {
        house = new TestHouse(folder);
        desk = new TestDesk(false, 100, 1180, 760, Optional.empty());
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    private MethodsPart page(String method) {
        return desk.open(parent -> {
            MethodsPart part = new MethodsPart(parent, desk, house.methods());
            part.show(method);
            return part;
        });
    }

    @Test
    void lists_what_is_in_force() {
        house.withMethods();

        MethodsPart page = page("milk-rinse");

        assertThat(page.table().orElseThrow().rows()).hasSize(7);
    }

    @Test
    void draws_every_pattern_of_a_strip_with_what_it_says() throws IOException {
        house.withMethods();

        Seen card = new Seen(page("hazelnut-rinse").side().orElseThrow().content());

        desk.picture("methods-hook");
        assertThat(card.all(StripDrawing.class)).hasSize(8);
        assertThat(card.all(Badge.class))
                .extracting(badge -> badge.shown().word())
                .containsOnlyOnce("Negative", "Positive")
                .contains("Positive, above range", "Invalid");
        assertThat(card.words()).contains("0.34 µg/mL in the sample, detected with a probability of 95\u00a0%");
        assertThat(card.words()).anyMatch(text -> text.startsWith("in force since") && text.contains("not signed"));
    }

    @Test
    void a_strip_of_two_lines_says_what_it_cannot_tell() {
        house.withMethods();

        assertThat(new Seen(page("milk-rinse").side().orElseThrow().content()).words())
                .anyMatch(text -> text.startsWith("Two lines and no hook line"));
    }

    @Test
    void without_a_method_it_says_what_to_do_first() throws IOException {
        page("none");

        desk.picture("methods-empty");
        assertThat(new Seen(desk.shell()).words()).anyMatch(text -> text.contains("wickbench method issue"));
    }
}
