package wickbench.parts.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.part.Brings;
import wickbench.api.part.PartSet;
import wickbench.api.part.Standing;
import wickbench.api.words.Language;
import wickbench.widgets.Column;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.RowSource;
import wickbench.widgets.Shape;
import wickbench.widgets.TableSpec;

/** The columns of the table of sets. */
final class PartsTable {
    private PartsTable() {}

    static TableSpec<PartSet> of(List<PartSet> sets) {
        List<Column<PartSet>> columns = List.of(
                Column.of("set", PartsUiWords.get("column.set"), 180, PartSet::title),
                Column.marked("standing", PartsUiWords.get("column.standing"), 160, PartsTable::mark),
                Column.of("version", PartsUiWords.get("column.version"), 80, PartSet::version),
                Column.of("brings", PartsUiWords.get("column.brings"), 430, PartsTable::brings),
                Column.of("maker", PartsUiWords.get("column.maker"), 120, PartsTable::maker),
                Column.<PartSet>of("name", PartsUiWords.get("column.name"), 100, PartSet::name)
                        .hidden());
        return new TableSpec<>(
                "parts.sets",
                PartsUiWords.get("table.name"),
                columns,
                RowSource.of(sets, columns),
                Optional.empty(),
                PartsUiWords.get("table.empty"));
    }

    static Mark mark(PartSet set) {
        String word = PartsUiWords.get("standing." + set.standing().code());
        return switch (set.standing()) {
            case OF_PRODUCT -> new Mark(word, Shape.RING, Meaning.CALM);
            case ADDED -> new Mark(word, Shape.SQUARE, Meaning.NOTICE);
            case AT_HAND -> new Mark(word, Shape.BAR, Meaning.NEUTRAL);
            case REFUSED -> new Mark(word, Shape.TRIANGLE, Meaning.ALARM);
        };
    }

    /** What does not run brings nothing; what it is for stands there instead. */
    static String brings(PartSet set) {
        return set.trouble().orElseGet(() -> set.standing().runs() ? brings(set.brings()) : set.description());
    }

    private static String brings(Brings brings) {
        List<String> words = new ArrayList<>();
        if (!brings.pages().isEmpty()) {
            words.add(PartsUiWords.get("brings.pages", String.join(", ", brings.pages())));
        }
        if (!brings.commands().isEmpty()) {
            words.add(PartsUiWords.get("brings.commands", String.join(", ", brings.commands())));
        }
        if (brings.gates() > 0) {
            words.add(PartsUiWords.get("brings.gates", brings.gates()));
        }
        for (String code : brings.languages()) {
            words.add(PartsUiWords.get("brings.language", Language.named(code)));
        }
        return String.join(" · ", words);
    }

    private static String maker(PartSet set) {
        return set.maker().orElseGet(() -> set.standing() == Standing.REFUSED ? "" : PartsUiWords.get("maker.product"));
    }
}
