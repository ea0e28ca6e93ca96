package wickbench.training.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.person.PersonId;
import wickbench.training.Call;
import wickbench.training.Round;
import wickbench.training.RoundKey;
import wickbench.training.Truth;
import wickbench.widgets.Column;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.RowSource;
import wickbench.widgets.Shape;
import wickbench.widgets.TableSpec;

/** What a row of the calls says: one strip, what it is, and what everybody called of it, wrong calls marked. */
final class CallsTable {
    private CallsTable() {}

    static TableSpec<RoundKey.Sealed> of(
            Round round, RoundKey key, Map<String, Truth> truth, TrainingDoors.Known site) {
        List<Column<RoundKey.Sealed>> columns = new ArrayList<>();
        columns.add(Column.of("code", TrainingUiWords.get("calls.column.code"), 80, RoundKey.Sealed::code));
        columns.add(Column.of(
                "class",
                TrainingUiWords.get("calls.column.class"),
                120,
                strip -> TrainingUiWords.get("class." + strip.kind().code())));
        columns.add(Column.of(
                "right",
                TrainingUiWords.get("calls.column.right"),
                150,
                strip -> Optional.ofNullable(truth.get(strip.code()))
                        .map(each -> Mark.of(each.expected()).word())
                        .orElseGet(() -> TrainingUiWords.get("calls.disputed"))));
        for (PersonId person : round.plan().callers()) {
            columns.add(Column.marked(
                    "caller." + person.value(), site.name(person), 190, strip -> mark(round, person, strip, truth)));
        }
        List<RoundKey.Sealed> strips = key.strips().stream()
                .sorted(Comparator.comparing((RoundKey.Sealed strip) -> strip.kind())
                        .thenComparing(RoundKey.Sealed::code))
                .toList();
        return new TableSpec<>(
                "training.calls",
                TrainingUiWords.get("calls.heading"),
                columns,
                RowSource.of(strips, columns),
                Optional.empty(),
                TrainingUiWords.get("calls.heading"));
    }

    private static Mark mark(Round round, PersonId person, RoundKey.Sealed strip, Map<String, Truth> truth) {
        Optional<Call> call = round.callsOf(person).stream()
                .filter(each -> each.code().equals(strip.code()))
                .findFirst();
        if (call.isEmpty()) {
            return new Mark(TrainingUiWords.get("calls.none"), Shape.BAR, Meaning.NEUTRAL);
        }
        String word = Mark.of(call.get().outcome()).word();
        boolean late = !round.plan().inside(call.get().elapsed());
        String said = late ? TrainingUiWords.get("calls.outside", word) : word;
        boolean wrong = Optional.ofNullable(truth.get(strip.code()))
                .filter(right -> !right.right(call.get().outcome()))
                .isPresent();
        if (wrong) {
            return new Mark(TrainingUiWords.get("calls.wrong", said), Shape.CROSS, Meaning.ALARM);
        }
        return new Mark(said, late ? Shape.DIAMOND : Shape.RING, late ? Meaning.CAUTION : Meaning.CALM);
    }
}
