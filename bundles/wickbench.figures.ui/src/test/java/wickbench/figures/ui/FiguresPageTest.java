package wickbench.figures.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.report.chart.ScreenPainter;
import wickbench.shell.PagePart;
import wickbench.testing.ui.TestDesk;

class FiguresPageTest {
    private TestDesk desk;

    @AfterEach
    void close() {
        desk.close();
    }

    /** 59 clean samples for 5 % with 95 %: a textbook value, from memory. */
    @Test
    void shows_the_first_sum_with_its_answer() throws IOException {
        open(false);
        assertThat(labels()).contains("59", "samples, all of them clean");
        desk.picture("figures-light");
    }

    /** NIST/SEMATECH e-Handbook §6.2.3.2, n = 52, c = 3; computed with R 4.2.2. */
    @Test
    void shows_a_plan_with_its_plot_in_the_dark() throws IOException {
        PagePart part = open(true);
        part.show("acceptance");
        desk.await(() -> labels().contains("Worst average outgoing share"));
        desk.picture("figures-dark");
    }

    @Test
    void says_at_the_field_what_is_wrong_and_gives_no_number() throws IOException {
        open(false);
        Text prevalence = find(desk.shell(), Text.class).get(0);
        prevalence.setText("2");
        desk.await(() -> labels().stream().anyMatch(words -> words.contains("expected a number from")));
        assertThat(labels()).doesNotContain("59");
        prevalence.setText("many");
        desk.await(() ->
                labels().stream().anyMatch(words -> words.contains("found 'many'") || words.contains("found many")));
        desk.picture("figures-refused");
        prevalence.setText("0,05");
        desk.await(() -> labels().contains("59"));
    }

    @Test
    void carries_what_was_typed_over_to_a_new_look() {
        PagePart part = open(false);
        find(desk.shell(), Text.class).get(0).setText("0.01");
        desk.await(() -> labels().contains("299"));
        PagePart next = desk.open(parent -> page().open(parent, desk));
        next.restore(part.draft().orElseThrow());
        desk.await(() -> find(desk.shell(), Text.class).stream()
                        .filter(field -> field.getText().equals("0.01"))
                        .count()
                == 2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "samples",
                "acceptance",
                "round",
                "particles",
                "nothing",
                "excursion",
                "reorder",
                "rare-demand",
                "order"
            })
    void every_sum_answers_what_stands_in_it_at_first(String id) {
        PagePart part = open(false);
        part.show(id);
        String answer = FiguresUiWords.get(firstFigure(id));
        desk.await(() -> labels().contains(answer));
    }

    private static String firstFigure(String id) {
        List<Sum> all = new ArrayList<>(SamplingSums.all());
        all.addAll(StoreSums.all());
        Sum sum = all.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
        return sum.compute().apply(new Given(firstTexts(sum))).figures().get(0).name();
    }

    private static java.util.Map<String, String> firstTexts(Sum sum) {
        java.util.Map<String, String> texts = new java.util.HashMap<>();
        sum.inputs().forEach(input -> texts.put(input.name(), input.first()));
        return texts;
    }

    private PagePart open(boolean dark) {
        desk = new TestDesk(dark, 100, 1180, 860, Optional.empty());
        return desk.open(parent -> page().open(parent, desk));
    }

    private static FiguresPage page() {
        return new FiguresPage(List.of(new ScreenPainter()));
    }

    private List<String> labels() {
        return find(desk.shell(), Label.class).stream().map(Label::getText).toList();
    }

    private static <C extends Control> List<C> find(Composite parent, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (Control child : parent.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            } else if (child instanceof Composite composite) {
                found.addAll(find(composite, type));
            }
        }
        return found;
    }
}
