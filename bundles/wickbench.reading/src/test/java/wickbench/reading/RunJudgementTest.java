package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.method.Format;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Verdict;

class RunJudgementTest {
    /**
     * Runs in one line. A strip is a kind and its lines: {@code s} sample, {@code b} blank, {@code c} low positive control;
     * {@code -} negative, {@code +} positive, {@code ?} without a start. {@code @2} starts it in the second minute, {@code /B}
     * is another lot, {@code :m} another method. The verdict is the outcome's sign, {@code 0} Invalid, {@code x} barred.
     *
     * <p>Common practice, no source: a failed positive control takes back every Negative since the last good one.
     */
    @ParameterizedTest
    @CsvSource({
        "s-, -",
        "s- s+, - +",
        "c+ s- s+, + - +",
        "s- c-, x -",
        "s- s+ c-, x + -",
        "c- s-, - x",
        "c+ s- c- s- c+ s-, + x - x + -",
        "s- c+ s- c-, - + x -",
        "s- c+ c- s-, - + - x",
        "b- c-, x -",
        "b+ s- s+, + - +",
        "b? s-, 0 -",
        "c- s-/B, - -",
        "c-/B s-, - -",
        "c- s-:m, - -",
        "c? s- c+ s-, 0 x + x",
        "c- c? s- c+ s-, - 0 x + x",
        "c-@3 s-@1 c+@2 s-@4, - - + x",
        "s? c-, x -"
    })
    void aFailedPositiveControlBarsNegativesUpToTheGoodOnes(String run, String expected) {
        List<RunJudgement.Unjudged> strips = new ArrayList<>();
        for (String strip : run.split(" ")) {
            strips.add(strip(strip, strips.size()));
        }
        assertThat(RunJudgement.judge(strips).stream()
                        .map(RunJudgementTest::told)
                        .collect(Collectors.joining(" ")))
                .isEqualTo(expected);
    }

    private static RunJudgement.Unjudged strip(String text, int place) {
        Given given = new Given(Format.SANDWICH_HOOK);
        int minute = text.contains("@") ? text.charAt(text.indexOf('@') + 1) - '0' : place;
        boolean untimed = text.charAt(1) == '?';
        given.started = Optional.of(Given.START.plusSeconds(60L * minute)).filter(start -> !untimed);
        given.read = Optional.of(Given.START.plusSeconds(60L * minute + 330));
        given.strip = text.charAt(1) == '+' ? Given.positive(given.format) : given.strip;
        given.lot = text.contains("/B") ? "B" : "A";
        given.methodId = text.contains(":m") ? "other" : given.methodId;
        given.control = Arrays.stream(RunControl.values())
                .filter(control -> text.charAt(0) == (control == RunControl.BLANK ? 'b' : 'c'))
                .findFirst();
        return given.unjudged();
    }

    private static String told(Verdict verdict) {
        boolean barred =
                verdict.findings().stream().anyMatch(finding -> finding.rule().equals("control.failed"));
        return switch (verdict.outcome()) {
            case NEGATIVE -> "-";
            case INVALID -> barred ? "x" : "0";
            default -> "+";
        };
    }
}
