package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.testing.ui.TestDesk;
import wickbench.widgets.Badge;
import wickbench.widgets.Mark;
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

        List<Control> card =
                all(page("hazelnut-rinse").side().orElseThrow().content()).toList();

        desk.picture("methods-hook");
        assertThat(card).filteredOn(StripDrawing.class::isInstance).hasSize(8);
        assertThat(card.stream()
                        .filter(Badge.class::isInstance)
                        .map(badge -> ((Badge) badge).shown())
                        .map(Mark::word))
                .containsOnlyOnce("Negative", "Positive")
                .contains("Positive, above range", "Invalid");
        assertThat(words(card)).contains("0.34 µg/mL in the sample, detected with a probability of 95\u00a0%");
        assertThat(words(card)).anyMatch(text -> text.startsWith("in force since") && text.contains("not signed"));
    }

    @Test
    void a_strip_of_two_lines_says_what_it_cannot_tell() {
        house.withMethods();

        assertThat(words(all(page("milk-rinse").side().orElseThrow().content()).toList()))
                .anyMatch(text -> text.startsWith("Two lines and no hook line"));
    }

    @Test
    void without_a_method_it_says_what_to_do_first() throws IOException {
        page("none");

        desk.picture("methods-empty");
        assertThat(words(all(desk.shell()).toList())).anyMatch(text -> text.contains("wickbench method issue"));
    }

    private static List<String> words(List<Control> controls) {
        return controls.stream()
                .filter(Label.class::isInstance)
                .map(label -> ((Label) label).getText())
                .toList();
    }

    private static Stream<Control> all(Control control) {
        return control instanceof Composite parent
                ? Stream.concat(
                        Stream.of(control), Stream.of(parent.getChildren()).flatMap(MethodsPageTest::all))
                : Stream.of(control);
    }
}
