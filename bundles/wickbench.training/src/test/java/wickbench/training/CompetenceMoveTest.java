package wickbench.training;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every move from every state: the table as it is meant, in full. A dash is not allowed. */
class CompetenceMoveTest {
    private static final String TABLE = """
            state      | authorise  | suspend   | restore    | lapse     | revise    | acknowledge
            authorised | authorised | suspended | -          | lapsed    | unread    | authorised
            unread     | authorised | suspended | -          | lapsed    | unread    | authorised
            lapsed     | authorised | suspended | -          | lapsed    | lapsed    | lapsed
            never      | authorised | -         | -          | never     | never     | never
            suspended  | -          | suspended | authorised | suspended | suspended | suspended
            """;

    @Test
    void the_table_is_this_one_and_no_other() {
        assertThat(written())
                .isEqualTo(TABLE.lines().map(CompetenceMoveTest::cells).toList());
    }

    @Test
    void only_who_is_authorised_may_test() {
        assertThat(Arrays.stream(CompetenceState.values()).filter(CompetenceState::mayTest))
                .containsExactly(CompetenceState.AUTHORISED);
    }

    private static List<List<String>> written() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row(
                "state",
                Arrays.stream(CompetenceMove.values()).map(CompetenceMove::code).toList()));
        for (CompetenceState state : CompetenceState.values()) {
            rows.add(row(
                    state.code(),
                    Arrays.stream(CompetenceMove.values())
                            .map(move ->
                                    move.from(state).map(CompetenceState::code).orElse("-"))
                            .toList()));
        }
        return rows;
    }

    private static List<String> row(String first, List<String> rest) {
        List<String> row = new ArrayList<>(List.of(first));
        row.addAll(rest);
        return row;
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split("\\|")).map(String::strip).toList();
    }
}
