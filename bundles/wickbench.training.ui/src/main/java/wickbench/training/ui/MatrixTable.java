package wickbench.training.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.method.MethodId;
import wickbench.api.person.Person;
import wickbench.training.Matrix;
import wickbench.widgets.Column;
import wickbench.widgets.RowSource;
import wickbench.widgets.Sort;
import wickbench.widgets.TableSpec;

/** What a row of the skills matrix says: one person, a cell for each method. */
final class MatrixTable {
    private static final String METHOD = "method.";

    private MatrixTable() {}

    static TableSpec<Person> of(TrainingDoors.Known now) {
        Matrix matrix = now.matrix();
        List<Column<Person>> columns = new ArrayList<>();
        columns.add(Column.of("person", TrainingUiWords.get("skills.person"), 140, person -> now.name(person.id())));
        for (MethodId method : matrix.methods()) {
            columns.add(Column.<Person>marked(
                    column(method),
                    method.value(),
                    216,
                    person -> States.of(matrix, matrix.cell(person.id(), method))));
        }
        return new TableSpec<>(
                "training.matrix",
                TrainingUiWords.get("skills.table"),
                columns,
                RowSource.of(matrix.people(), columns),
                Optional.of(new Sort("person", true)),
                TrainingUiWords.get("skills.nobody"));
    }

    /** Returns the id of the column of a method. */
    static String column(MethodId method) {
        return METHOD + method.value();
    }

    /** Returns the method of a column; empty for a column of something else. */
    static Optional<MethodId> method(String column) {
        return Optional.of(column)
                .filter(id -> id.startsWith(METHOD))
                .map(id -> new MethodId(id.substring(METHOD.length())));
    }
}
