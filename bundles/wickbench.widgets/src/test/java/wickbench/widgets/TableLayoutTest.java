package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.check.Checked;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

class TableLayoutTest {
    private static final List<Column<String>> COLUMNS = List.of(
            Column.of("a", "A", 80, row -> row),
            Column.of("b", "B", 90, row -> row),
            Column.of("c", "C", 100, (String row) -> row).hidden());
    private static final TableLayout FIRST = TableLayout.first(
            new TableSpec<>("t", "T", COLUMNS, RowSource.of(List.of(), COLUMNS), Optional.empty(), "none"));

    @Test
    void comesBackAsItWasKept() {
        TableLayout laid = FIRST.toggled("a").toggled("c").sortedBy(Optional.of(new Sort("b", false)));
        assertThat(FIRST.with(laid.toJson())).isEqualTo(laid);
    }

    @Test
    void neverHidesItsLastColumn() {
        assertThat(FIRST.toggled("a").toggled("b").hidden()).containsExactlyInAnyOrder("a", "c");
    }

    @Test
    void putsColumnsThatItDoesNotKnowLast() {
        TableLayout older = FIRST.with(read("{\"order\":[\"b\",\"gone\"],\"hidden\":[\"gone\"]}"));
        assertThat(older.order()).containsExactly("b", "a", "c");
        assertThat(older.hidden()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"order\":7,\"widths\":[],\"sort\":\"a\"}",
                "{\"widths\":{\"a\":-5,\"b\":1e9,\"x\":50}}",
                "{\"hidden\":[\"a\",\"b\",\"c\"]}",
                "{\"sort\":{\"column\":\"gone\",\"ascending\":true}}"
            })
    void fallsBackToTheFirstLayoutWhereWhatWasKeptMakesNoSense(String kept) {
        assertThat(FIRST.with(read(kept))).isEqualTo(FIRST);
    }

    private static Json.Obj read(String text) {
        return ((Checked.Good<Json.Obj>) JsonReader.readObject("kept", text)).value();
    }
}
