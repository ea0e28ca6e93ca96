package wickbench.training.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.json.Json;
import wickbench.training.Paper;
import wickbench.training.Questions;
import wickbench.training.Questions.Question;

/** Knowledge checks: the site's questions, each time in another order. */
final class Papers {
    private final Book book;
    private final Pen pen;

    Papers(Book book, Pen pen) {
        this.book = book;
        this.pen = pen;
    }

    Questions issue(Questions set, Actor by) {
        Set<String> ids = new HashSet<>();
        for (Question question : set.questions()) {
            if (!ids.add(question.id())) {
                throw Said.wrong("id", "question.twice", question.id());
            }
            int choices = question.choices().size();
            if (choices < 2 || new HashSet<>(question.choices()).size() < choices) {
                throw Said.wrong(question.id(), "question.choices");
            }
            if (question.right() < 1 || question.right() > choices) {
                throw Said.wrong(question.id(), "question.right", choices, question.right());
            }
        }
        if (set.questions().isEmpty()
                || set.needed() < 1
                || set.needed() > set.questions().size()) {
            throw Said.wrong("needed", "question.needed", set.questions().size(), set.needed());
        }
        pen.write(Act.KEEP_TRAINING, Kinds.QUESTIONS, QuestionsJson.write(set), by);
        return set;
    }

    Paper paper(String name) {
        List<Paper.Item> items = new ArrayList<>();
        for (Question question : shuffled(set(name).questions())) {
            items.add(new Paper.Item(question.id(), question.text(), shuffled(question.choices())));
        }
        return new Paper(name, items);
    }

    boolean answered(Paper paper, Map<String, Integer> choices, Actor by) {
        Questions set = set(paper.set());
        List<Json.Obj> answers = new ArrayList<>();
        int right = 0;
        for (Paper.Item item : paper.items()) {
            Question question = question(set, item);
            Integer choice = choices.get(item.id());
            if (choice == null || choice < 1 || choice > item.choices().size()) {
                throw Said.wrong(item.id(), "answer.expected", item.choices().size());
            }
            String given = item.choices().get(choice - 1);
            boolean good = given.equals(question.choices().get(question.right() - 1));
            right += good ? 1 : 0;
            answers.add(Json.object()
                    .with("id", item.id())
                    .with("shown", Json.texts(item.choices()))
                    .with("given", given)
                    .with("right", good));
        }
        long asked = paper.items().stream().map(Paper.Item::id).distinct().count();
        if (asked < set.questions().size() || answers.size() > set.questions().size()) {
            throw Said.wrong("answers", "answer.all", set.questions().size(), answers.size());
        }
        boolean passed = right >= set.needed();
        Json.Obj body = Json.object()
                .with("person", by.who().value())
                .with("set", set.name())
                .with("at", Bodies.time(book.now()))
                .with("answers", Json.array(answers))
                .with("right", right)
                .with("needed", set.needed())
                .with("passed", passed);
        pen.write(Act.CALL_STRIPS, Kinds.ANSWERED, body, by);
        return passed;
    }

    private static Question question(Questions set, Paper.Item item) {
        return set.questions().stream()
                .filter(each -> each.id().equals(item.id())
                        && new HashSet<>(each.choices()).equals(new HashSet<>(item.choices())))
                .findFirst()
                .orElseThrow(() -> Said.wrong(item.id(), "question.other", set.name()));
    }

    private Questions set(String name) {
        return book.told("kind = ?", Kinds.QUESTIONS).stream()
                .map(told -> QuestionsJson.read(told.fields()))
                .filter(set -> set.name().equals(name))
                .reduce((earlier, later) -> later)
                .orElseThrow(() -> Said.wrong("set", "question.set-unknown", name));
    }

    /** Each order as likely as any other. */
    private <T> List<T> shuffled(List<T> items) {
        return shuffled(items, pen.home().chance());
    }

    static <T> List<T> shuffled(List<T> items, RandomGenerator chance) {
        List<T> order = new ArrayList<>(items);
        for (int i = order.size() - 1; i > 0; i--) {
            java.util.Collections.swap(order, i, chance.nextInt(i + 1));
        }
        return order;
    }
}
