package wickbench.figures.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.figures.sums.Answer;
import wickbench.figures.sums.Remark;

/** Prints an answer: as one value for machines, as tables with remarks for people. */
final class AnswerPrint {
    private final Terminal terminal;
    private final List<List<String>> rows = new ArrayList<>();

    AnswerPrint(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(Json.Obj figures, List<Remark> remarks) {
        if (terminal.json()) {
            terminal.json(figures);
            return;
        }
        figures.members().forEach((name, value) -> {
            if (!isPoints(value)) {
                add(name, value);
            }
        });
        if (!rows.isEmpty()) {
            terminal.table(List.of(FiguresWords.get("print.figure"), FiguresWords.get("print.value")), rows);
        }
        figures.members().values().stream().filter(AnswerPrint::isPoints).forEach(points -> points((Json.Arr) points));
        if (!remarks.isEmpty()) {
            terminal.line("");
            remarks.stream().map(Remark::text).forEach(terminal::line);
        }
    }

    private void add(String name, Json value) {
        if (value instanceof Json.Obj group) {
            group.members().forEach((member, of) -> add(name + "." + member, of));
        } else {
            rows.add(List.of(name, text(value)));
        }
    }

    private void points(Json.Arr points) {
        terminal.line("");
        List<Json.Obj> all = points.items().stream().map(Json.Obj.class::cast).toList();
        terminal.table(
                List.copyOf(all.get(0).members().keySet()),
                all.stream()
                        .map(point -> point.members().values().stream()
                                .map(AnswerPrint::text)
                                .toList())
                        .toList());
    }

    /** Tells an array of objects, which people read as a table of its own. */
    private static boolean isPoints(Json value) {
        return value instanceof Json.Arr array
                && !array.items().isEmpty()
                && array.items().get(0) instanceof Json.Obj;
    }

    static String text(Json value) {
        if (value instanceof Json.Num number) {
            return Answer.forPeople(number.value());
        }
        if (value instanceof Json.Arr array) {
            return array.items().stream().map(AnswerPrint::text).collect(Collectors.joining(" "));
        }
        if (value instanceof Json.Bool choice) {
            return FiguresWords.get(choice.value() ? "print.yes" : "print.no");
        }
        return value instanceof Json.Text text ? text.value() : "–";
    }
}
