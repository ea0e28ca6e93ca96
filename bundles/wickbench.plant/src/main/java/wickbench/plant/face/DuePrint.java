package wickbench.plant.face;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.plant.programme.DueItem;
import wickbench.plant.terms.PlantWords;

/** Prints what is due. */
final class DuePrint {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final Terminal terminal;
    private final ZoneId zone;

    DuePrint(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    /** Prints, the most urgent first; tells whether something is missed or overdue. */
    boolean print(List<DueItem> items, boolean all) {
        List<DueItem> shown = items.stream()
                .filter(item -> all || item.state().open())
                .sorted(Comparator.comparing(DueItem::state)
                        .thenComparing(DueItem::by)
                        .thenComparing(DueItem::key))
                .toList();
        if (terminal.json()) {
            terminal.json(Json.array(shown.stream().map(DuePrint::json).toList()));
        } else if (shown.isEmpty()) {
            terminal.line(PlantWords.get("due.none"));
        } else {
            terminal.table(
                    List.of("state", "rule", "line", "since", "by", "about", "missing").stream()
                            .map(column -> PlantWords.get("column." + column))
                            .toList(),
                    shown.stream().map(this::row).toList());
        }
        return shown.stream()
                .anyMatch(item -> item.state().open() && !item.state().equals(wickbench.plant.programme.DueState.DUE));
    }

    private List<String> row(DueItem item) {
        return List.of(
                PlantWords.get("due-state." + item.state().code()),
                item.key(),
                item.rule().line(),
                minute(item.since()),
                minute(item.by()),
                item.about()
                        .orElseGet(() ->
                                PlantWords.get("when." + item.rule().when().code())),
                item.missing().size() + " / " + item.samples().size());
    }

    private String minute(Instant at) {
        return MINUTE.format(at.atZone(zone));
    }

    private static Json.Obj json(DueItem item) {
        return Json.object()
                .with("key", item.key())
                .with("rule", item.rule().id())
                .with("line", item.rule().line())
                .with("when", item.rule().when().code())
                .with("state", item.state().code())
                .with("since", item.since().toString())
                .with("by", item.by().toString())
                .withText("about", item.about())
                .with(
                        "samples",
                        Json.array(item.samples().stream()
                                .map(sample -> (Json) sample.what()
                                        .json()
                                        .withText("done", sample.done().map(UUID::toString)))
                                .toList()));
    }
}
