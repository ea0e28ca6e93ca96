package wickbench.figures.ui;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.json.Json;
import wickbench.figures.sums.Answer;
import wickbench.figures.sums.Remark;
import wickbench.figures.sums.Sum;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Shows an answer: in words, then its figures, its tables, what to mind, and by which formula. */
final class AnswerView {
    private static final String SIGNALS = "signals";

    private final Composite room;
    private final Theme theme;

    AnswerView(Composite room, Theme theme) {
        this.room = room;
        this.theme = theme;
    }

    /** Shows what is to be read first: the answer in words, its signals, and what it does not say. */
    void showWords(Answer answer) {
        List<String> result = answer.said(Remark.Kind.RESULT);
        for (int i = 0; i < result.size(); i++) {
            text(i == 0 ? Type.HEADING : Type.STRONG, result.get(i));
        }
        signals(answer.figures().members());
        answer.said(Remark.Kind.CAUTION).forEach(text -> note(Meaning.CAUTION, text));
    }

    /** Shows the figures, the tables, and by which formula. */
    void showFigures(Sum sum, Answer answer) {
        Map<String, Json> members = answer.figures().members();
        Facts facts = new Facts(room, theme);
        members.forEach((name, value) -> facts(facts, sum, "", name, value));
        members.forEach((name, value) -> {
            if (isTable(value) && !name.equals(SIGNALS)) {
                theme.controls().label(room, Type.STRONG, sum.name(name));
                RowsTable.show(room, theme, sum, name, (Json.Arr) value);
            }
        });
        theme.controls().quiet(room, FiguresUiWords.get("answer.formula"));
        answer.said(Remark.Kind.FORMULA).forEach(text -> text(Type.SMALL, text));
    }

    private void text(Type type, String words) {
        Fit.wide(theme.controls().text(room, type, escaped(words)));
    }

    private void note(Meaning meaning, String words) {
        Fit.wide(new Note(room, theme, meaning, escaped(words)));
    }

    /** A label takes a single ampersand for the sign of a key. */
    static String escaped(String words) {
        return words.replace("&", "&&");
    }

    private void signals(Map<String, Json> members) {
        if (members.get(SIGNALS) instanceof Json.Arr signals) {
            signals.items().stream()
                    .map(signal -> ((Json.Obj) signal).get("text").orElseThrow())
                    .forEach(text -> note(Meaning.NOTICE, plain(text)));
        }
    }

    private void facts(Facts facts, Sum sum, String before, String name, Json value) {
        String label = before + sum.name(name);
        if (value instanceof Json.Obj group) {
            if (group.get("value").isPresent() && group.get("lower").isPresent()) {
                facts.add(label, limits(group));
                group.members().forEach((member, of) -> {
                    if (!List.of("value", "lower", "upper").contains(member)) {
                        facts(facts, sum, label + ", ", member, of);
                    }
                });
            } else {
                group.members().forEach((member, of) -> facts(facts, sum, label + ", ", member, of));
            }
        } else if (!isTable(value) && !name.equals(SIGNALS)) {
            facts.add(label, plain(value));
        }
    }

    private static String limits(Json.Obj of) {
        return FiguresUiWords.get(
                "answer.limits",
                plain(of.get("value").orElseThrow()),
                plain(of.get("lower").orElseThrow()),
                plain(of.get("upper").orElseThrow()));
    }

    private static boolean isTable(Json value) {
        return value instanceof Json.Arr array
                && !array.items().isEmpty()
                && array.items().get(0) instanceof Json.Obj;
    }

    /** Writes a value as people read it. */
    static String plain(Json value) {
        if (value instanceof Json.Num number) {
            return Answer.forPeople(number.value());
        }
        if (value instanceof Json.Arr array) {
            return array.items().stream().map(AnswerView::plain).collect(Collectors.joining("  "));
        }
        if (value instanceof Json.Bool choice) {
            return FiguresUiWords.get(choice.value() ? "answer.yes" : "answer.no");
        }
        return value instanceof Json.Text text ? text.value() : "–";
    }
}
