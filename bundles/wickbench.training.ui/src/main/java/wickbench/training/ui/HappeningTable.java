package wickbench.training.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wickbench.training.Happening;
import wickbench.training.PersonRecord;
import wickbench.widgets.Column;
import wickbench.widgets.RowSource;
import wickbench.widgets.Sort;
import wickbench.widgets.TableSpec;

/** What a row of somebody's file says. */
final class HappeningTable {
    private static final Set<String> KINDS = Set.of(
            "training.authorised",
            "training.suspended",
            "training.restored",
            "training.acknowledged",
            "training.sight-tested",
            "training.observed",
            "training.answered",
            "training.seen",
            "round.called",
            "drill.done",
            "clash.settled");

    private HappeningTable() {}

    static TableSpec<Happening> of(PersonRecord record, TrainingDoors.Known known) {
        List<Column<Happening>> columns = List.of(
                column("at", 130, each -> Times.minute(each.at(), known.zone())),
                column("what", 150, each -> kind(each.entry().kind())),
                column("words", 200, each -> words(each.facts())),
                column("method", 150, each -> each.facts().getOrDefault("method", "")),
                column("by", 90, each -> known.name(each.entry().by())),
                column("signed", 90, each -> TrainingUiWords.get(each.signed() ? "signed.yes" : "signed.no")));
        return new TableSpec<>(
                "training.file",
                TrainingUiWords.get("file.line"),
                columns,
                RowSource.of(record.happenings(), columns),
                Optional.of(new Sort("at", false)),
                TrainingUiWords.get("file.none"));
    }

    private static Column<Happening> column(String id, int width, java.util.function.Function<Happening, String> text) {
        return Column.of(id, TrainingUiWords.get("file.column." + id), width, text);
    }

    /** Entries of kinds to come are named as they are. */
    private static String kind(String kind) {
        return KINDS.contains(kind) ? TrainingUiWords.get("kind." + kind) : kind;
    }

    /** What a person wrote, or what was found. */
    private static String words(Map<String, String> facts) {
        Optional<String> threshold = Optional.ofNullable(facts.get("threshold"))
                .map(number -> TrainingUiWords.get("file.threshold", Percent.of(Double.parseDouble(number))));
        return threshold
                .or(() -> Stream.of("reason", "how", "remark", "set", "round")
                        .filter(facts::containsKey)
                        .map(facts::get)
                        .findFirst())
                .orElse("");
    }
}
