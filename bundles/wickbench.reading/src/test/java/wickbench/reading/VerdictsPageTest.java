package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The tables on the page about verdicts are what the program does. */
class VerdictsPageTest {
    private static final Pattern TABLE =
            Pattern.compile("<!-- table: ([a-z -]+) -->\\n+(.*?)\\n+<!-- end -->", Pattern.DOTALL);

    static Set<String> names() {
        return VerdictTables.all().keySet();
    }

    @ParameterizedTest
    @MethodSource("names")
    void tablesAreWhatTheProgramDoes(String name) {
        Supplier<String> expected = VerdictTables.all().get(name);
        assertThat(written()).containsEntry(name, expected.get());
    }

    @Test
    void holdsNoOtherTable() {
        assertThat(written().keySet()).isEqualTo(names());
    }

    private static Map<String, String> written() {
        Map<String, String> tables = new TreeMap<>();
        TABLE.matcher(Golden.docs("verdicts.md"))
                .results()
                .forEach((MatchResult found) -> tables.put(found.group(1), found.group(2)));
        return tables;
    }
}
