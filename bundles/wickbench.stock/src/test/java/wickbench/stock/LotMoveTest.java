package wickbench.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every move from every state: the table as it is meant, in full. A dash is not allowed. */
class LotMoveTest {
    private static final String TABLE = """
            state                 | receive               | pass        | waive       | reject    | quarantine            | release        | use-up  | destroy
            fit                   | awaiting-check        | fit         | -           | rejected  | quarantined           | -              | used-up | destroyed
            used-up               | awaiting-check        | -           | -           | rejected  | used-up               | -              | -       | destroyed
            awaiting-check        | awaiting-check        | fit         | fit         | rejected  | quarantined-unchecked | -              | used-up | destroyed
            quarantined           | quarantined-unchecked | quarantined | -           | rejected  | quarantined           | fit            | -       | destroyed
            quarantined-unchecked | quarantined-unchecked | quarantined | quarantined | rejected  | quarantined-unchecked | awaiting-check | -       | destroyed
            rejected              | -                     | -           | -           | -         | -                     | -              | -       | destroyed
            destroyed             | -                     | -           | -           | destroyed | -                     | -              | -       | -
            """;

    @Test
    void the_table_is_this_one_and_no_other() {
        assertThat(written()).isEqualTo(TABLE.lines().map(LotMoveTest::cells).toList());
    }

    private static List<List<String>> written() {
        List<List<String>> rows = new java.util.ArrayList<>();
        rows.add(row("state", Arrays.stream(LotMove.values()).map(LotMove::code).toList()));
        for (LotState state : LotState.values()) {
            rows.add(row(
                    state.code(),
                    Arrays.stream(LotMove.values())
                            .map(move -> move.from(state).map(LotState::code).orElse("-"))
                            .toList()));
        }
        return rows;
    }

    private static List<String> row(String first, List<String> rest) {
        List<String> row = new java.util.ArrayList<>(List.of(first));
        row.addAll(rest);
        return row;
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split("\\|")).map(String::strip).collect(Collectors.toList());
    }
}
