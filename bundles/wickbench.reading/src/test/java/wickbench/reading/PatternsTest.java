package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Verdict;
import wickbench.api.words.Coded;
import wickbench.reading.Patterns.Pattern;

/** Every pattern of every format, written down by hand rules: common practice, no source. */
class PatternsTest {
    @ParameterizedTest
    @CsvSource({
        "sandwich,       patterns-sandwich.csv,              ''",
        "sandwich-hook,  patterns-sandwich-hook.csv,         ''",
        "competitive,    patterns-competitive.csv,           ''",
        "competitive,    patterns-competitive-faint-seen.csv, seen",
        "competitive,    patterns-competitive.csv,           not-seen"
    })
    void areAsWrittenDown(String code, String file, String faint) {
        Format format = Coded.of(Format.class, code);
        Optional<Seen> faintTest = Optional.of(faint).filter(f -> !f.isEmpty()).map(f -> Coded.of(Seen.class, f));
        Map<List<String>, List<String>> expected = Golden.rows(file).stream()
                .collect(Collectors.toMap(row -> row.subList(0, 3), row -> row.subList(3, 5)));
        List<Pattern> patterns = Patterns.of(format, faintTest);
        assertThat(patterns).hasSize((int) Math.pow(4, format.lines().size())).hasSameSizeAs(expected.keySet());
        for (Pattern pattern : patterns) {
            assertThat(List.of(pattern.outcome().code(), String.valueOf(pattern.sign())))
                    .as("%s", pattern)
                    .isEqualTo(expected.get(answers(pattern.strip())));
        }
    }

    @ParameterizedTest
    @EnumSource
    void areJudgedAlike(Format format) {
        for (Pattern pattern : Patterns.of(format)) {
            Verdict verdict =
                    new Given(format).with(g -> g.strip = pattern.strip()).judge();
            assertThat(verdict.outcome()).as("%s", pattern).isEqualTo(pattern.outcome());
            assertThat(verdict.sign()).as("%s", pattern).isEqualTo(pattern.sign());
        }
    }

    @ParameterizedTest
    @EnumSource
    void holdAllStripsOnce(Format format) {
        List<Strip> strips = Patterns.of(format).stream().map(Pattern::strip).toList();
        assertThat(new HashSet<>(strips)).hasSameSizeAs(strips);
    }

    @ParameterizedTest
    @EnumSource
    void haveAPlainHalfForBenchCards(Format format) {
        List<Pattern> plain =
                Patterns.of(format).stream().filter(Pattern::plain).toList();
        assertThat(plain).hasSize(1 << format.lines().size());
        assertThat(plain.stream().map(Pattern::outcome)).contains(Outcome.NEGATIVE, Outcome.POSITIVE, Outcome.INVALID);
    }

    private static List<String> answers(Strip strip) {
        return Stream.of(LineRole.CONTROL, LineRole.HOOK, LineRole.TEST)
                .map(role -> Optional.ofNullable(strip.lines().get(role))
                        .map(Coded::code)
                        .orElse("-"))
                .toList();
    }
}
