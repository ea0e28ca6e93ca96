package wickbench.figures.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wickbench.api.check.BadInput;
import wickbench.api.check.Checked;
import wickbench.api.json.Json;

/** Tables as people write them, and as they stand in an entry. */
class TableTextTest {
    @Test
    void the_first_separator_decides_and_blank_lines_go() {
        assertThat(rows(TableText.of("t", "a;b\n\n1,5; 2 \r\n")))
                .containsExactly(List.of("a", "b"), List.of("1,5", "2"));
        assertThat(rows(TableText.of("t", "\uFEFF1\t2"))).containsExactly(List.of("1", "2"));
        assertThat(rows(TableText.of("t", "\"a,b\",2"))).containsExactly(List.of("a,b", "2"));
        assertThat(TableText.of("t", "1;2").decimalComma()).isTrue();
        assertThat(TableText.of("t", "1,2").decimalComma()).isFalse();
    }

    @Test
    void lines_are_counted_as_in_the_file() {
        assertThat(TableText.of("t", "x,y\n\n1,2").body().get(0).number()).isEqualTo(3);
    }

    @Test
    void what_is_no_table_is_told() {
        assertThatThrownBy(() -> TableText.of("t.csv", "1,\"2"))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith("t.csv:1: ");
        assertThatThrownBy(() -> TableText.of("t.csv", new byte[] {(byte) 0xE9}))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("UTF-8");
        assertThatThrownBy(() -> TableText.of("t.csv", new byte[(int) TableText.LARGEST_BYTES + 1]))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("larger than");
        assertThat(TableText.of("t.csv", "ä,1".getBytes(StandardCharsets.UTF_8)).lines())
                .hasSize(1);
    }

    @Test
    void columns_stand_in_the_order_asked_for_where_a_header_names_them() {
        List<String> columns = List.of("level", "tests");
        assertThat(TableText.of("t", "Tests,note,level\n5,x,0.1").arranged(columns))
                .containsExactly(List.of("0.1", "5"));
        assertThat(TableText.of("t", "a,b\n5,0.1").arranged(columns)).containsExactly(List.of("5", "0.1"));
        assertThat(TableText.of("t", "5,0.1").arranged(List.of())).containsExactly(List.of("5", "0.1"));
        assertThat(TableText.of("t", "tests,level\n5").arranged(columns)).containsExactly(List.of("5"));
    }

    @Test
    void typed_rows_lose_their_empty_ends() {
        TableText typed = TableText.ofRows("", List.of(List.of(" 1 ", "", ""), List.of("", ""), List.of("", "2")));
        assertThat(rows(typed)).containsExactly(List.of("1"), List.of("", "2"));
        assertThat(typed.lines().get(1).number()).isEqualTo(3);
    }

    @Test
    void a_body_of_another_form_is_refused_by_the_member() {
        Json.Obj good = KeptJson.write(new KeptSum(
                "demand",
                1,
                new Given(Map.of("alpha", "0.1"), Map.of("demands", TableText.of("d.csv", "1\n2"))),
                Json.object().with("plain", 1),
                java.util.Optional.empty()));
        assertThat(KeptSum.read("e", good).complaints()).isEmpty();
        Json.Obj none = Json.object();
        for (Json table : List.of(
                new Json.Text("x"),
                none,
                none.with("source", "s"),
                none.with("source", "s").with("decimal_comma", true),
                none.with("source", "s").with("decimal_comma", true).with("rows", Json.texts(List.of("x"))))) {
            refused(good.with("tables", none.with("demands", table)), "tables.demands");
        }
        refused(good.with("inputs", none.with("alpha", 1)), "inputs.alpha");
        refused(good.with("figures", "none"), "figures");
    }

    private static void refused(Json.Obj body, String member) {
        Checked<KeptSum> read = KeptSum.read("e", body);
        assertThat(read.complaints()).anyMatch(complaint -> complaint.field().equals(member));
    }

    private static List<List<String>> rows(TableText table) {
        return table.lines().stream().map(TableText.Line::cells).toList();
    }
}
