package wickbench.people.ui;

import java.util.List;
import java.util.Optional;
import wickbench.widgets.Column;
import wickbench.widgets.RowSource;
import wickbench.widgets.Sort;
import wickbench.widgets.TableSpec;

/** The table of everyone. */
final class PeopleTable {
    private PeopleTable() {}

    static TableSpec<PersonRow> of(List<PersonRow> all) {
        List<Column<PersonRow>> columns = List.of(
                Column.of("name", title("name"), 155, row -> row.person().display()),
                Column.of("id", title("id"), 75, row -> row.person().id().value()),
                Column.of("roles", title("roles"), 190, PersonRow::roles),
                Column.<PersonRow>marked("passphrase", title("passphrase"), 115, PersonRow::mark));
        return new TableSpec<>(
                "people.everyone",
                PeopleUiWords.get("page.name"),
                columns,
                RowSource.of(all, columns),
                Optional.of(new Sort("name", true)),
                PeopleUiWords.get("page.empty"));
    }

    private static String title(String id) {
        return PeopleUiWords.get("column." + id);
    }
}
