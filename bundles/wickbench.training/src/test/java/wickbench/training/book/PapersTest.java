package wickbench.training.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.training.TrainingHome.OP;
import static wickbench.training.TrainingHome.TRAINER;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Actor;
import wickbench.api.check.BadInput;
import wickbench.training.Paper;
import wickbench.training.Questions;
import wickbench.training.TrainingHome;

class PapersTest {
    private static final List<String> CHOICES = List.of("one", "two", "three");

    @TempDir
    private Path folder;

    private TrainingHome home;

    @BeforeEach
    void open() {
        home = new TrainingHome(folder);
        home.coach.issue(set(2), TRAINER);
    }

    @AfterEach
    void close() {
        home.close();
    }

    private static Questions set(int needed) {
        return new Questions(
                "lines",
                IntStream.rangeClosed(1, 3)
                        .mapToObj(i -> new Questions.Question("q" + i, "Which is " + i + "?", CHOICES, i))
                        .toList(),
                needed);
    }

    @Test
    void questions_and_choices_are_laid_in_many_orders() {
        Set<Paper> papers = new HashSet<>();
        for (int i = 0; i < 20; i++) {
            papers.add(home.coach.paper("lines"));
        }
        assertThat(papers.size()).isGreaterThan(10);
    }

    @Test
    void what_is_right_does_not_depend_on_the_order_and_each_answer_is_kept() {
        Paper paper = home.coach.paper("lines");
        assertThat(home.coach.answered(paper, chosen(paper, Map.of("q1", 1, "q2", 2, "q3", 3)), Actor.of(OP)))
                .isTrue();
        assertThat(home.coach.answered(paper, chosen(paper, Map.of("q1", 1, "q2", 1, "q3", 1)), Actor.of(OP)))
                .isFalse();
        assertThat(home.entries())
                .last()
                .satisfies(entry -> assertThat(entry.body().canonical())
                        .contains("\"passed\":false")
                        .contains("\"right\":1")
                        .contains("\"given\":\"one\""));
    }

    /** Finds on the paper where the choices lie that are meant. */
    private static Map<String, Integer> chosen(Paper paper, Map<String, Integer> meant) {
        Map<String, Integer> chosen = new HashMap<>();
        paper.items()
                .forEach(item ->
                        chosen.put(item.id(), item.choices().indexOf(CHOICES.get(meant.get(item.id()) - 1)) + 1));
        return chosen;
    }

    @Test
    void a_paper_that_is_not_whole_or_not_ours_is_refused() {
        Paper paper = home.coach.paper("lines");
        int before = home.entries().size();
        wrong("choice from 1 to 3", () -> home.coach.answered(paper, Map.of("q1", 1, "q2", 1), Actor.of(OP)));
        wrong("choice from 1 to 3", () -> home.coach.answered(paper, Map.of("q1", 4, "q2", 1, "q3", 1), Actor.of(OP)));
        Paper part = new Paper("lines", paper.items().subList(0, 2));
        wrong("answered once each", () -> home.coach.answered(part, Map.of("q1", 1, "q2", 1, "q3", 1), Actor.of(OP)));
        Paper twice = new Paper(
                "lines",
                List.of(
                        paper.items().get(0),
                        paper.items().get(0),
                        paper.items().get(1)));
        wrong("answered once each", () -> home.coach.answered(twice, Map.of("q1", 1, "q2", 1, "q3", 1), Actor.of(OP)));
        Paper foreign = new Paper("lines", List.of(new Paper.Item("q1", "?", List.of("a", "b"))));
        wrong("as it was asked", () -> home.coach.answered(foreign, Map.of("q1", 1), Actor.of(OP)));
        wrong("no questions are known", () -> home.coach.paper("nothing"));
        wrong("needed", () -> home.coach.issue(set(4), TRAINER));
        assertThat(home.entries()).hasSize(before);
    }

    private static void wrong(String text, Runnable act) {
        assertThatThrownBy(act::run).isInstanceOf(BadInput.class).hasMessageContaining(text);
    }
}
