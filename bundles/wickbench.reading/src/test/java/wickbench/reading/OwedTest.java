package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.api.method.Format;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Verdict;
import wickbench.api.reading.Visual;
import wickbench.api.words.Coded;

class OwedTest {
    /** A situation in words and what it owes, on a surface and in food. */
    record Row(String when, Format format, Consumer<Given> change, String surface, String food) {
        String owed(Route route) {
            return codes(new Given(format)
                    .with(g -> g.strip = Given.negative(format))
                    .with(g -> at(g, route))
                    .with(change)
                    .judge());
        }
    }

    static final List<Row> ROWS = List.of(
            new Row("Negative", Format.SANDWICH_HOOK, g -> {}, "", ""),
            new Row("Positive", Format.SANDWICH_HOOK, OwedTest::positive, "hold re-clean re-test", "hold"),
            new Row(
                    "Positive, above range",
                    Format.SANDWICH_HOOK,
                    g -> g.strip = Given.aboveRange(),
                    "bracket hold re-clean re-test",
                    "bracket hold"),
            new Row("Invalid", Format.SANDWICH_HOOK, g -> g.read = Optional.empty(), "repeat", "repeat"),
            new Row(
                    "Invalid with a sign of allergen",
                    Format.SANDWICH_HOOK,
                    g -> positive(g.with(other -> other.read = Optional.empty())),
                    "repeat hold",
                    "repeat hold"),
            new Row(
                    "Negative without hook line, little allergen expected",
                    Format.SANDWICH,
                    g -> g.reason = Optional.of(Reason.AFTER_CLEANING),
                    "",
                    ""),
            new Row(
                    "Negative without hook line, much allergen plausible",
                    Format.SANDWICH,
                    g -> g.reason = Optional.of(Reason.RAW_MATERIAL),
                    "repeat-diluted",
                    "repeat-diluted"),
            new Row(
                    "Negative without hook line, reason not stated",
                    Format.SANDWICH,
                    g -> g.reason = Optional.empty(),
                    "repeat-diluted",
                    "repeat-diluted"),
            new Row(
                    "Negative without hook line, already diluted",
                    Format.SANDWICH,
                    g -> g.with(other -> other.reason = Optional.empty()).dilution = BigDecimal.TEN,
                    "",
                    ""),
            new Row(
                    "Negative, visibly soiled",
                    Format.SANDWICH_HOOK,
                    g -> g.visual = Optional.of(Visual.SOILED),
                    "re-clean",
                    "re-clean"),
            new Row(
                    "Negative without hook line, visibly soiled",
                    Format.SANDWICH,
                    g -> g.visual = Optional.of(Visual.SOILED),
                    "repeat-diluted re-clean",
                    "repeat-diluted re-clean"),
            new Row("Blank control, Negative", Format.SANDWICH, g -> control(g, RunControl.BLANK), "", ""),
            new Row(
                    "Blank control, Positive or Invalid",
                    Format.SANDWICH,
                    g -> positive(control(g, RunControl.BLANK)),
                    "repeat",
                    "repeat"),
            new Row(
                    "Low positive control, Positive",
                    Format.SANDWICH,
                    g -> positive(control(g, RunControl.LOW_POSITIVE)),
                    "",
                    ""),
            new Row(
                    "Low positive control, Negative or Invalid",
                    Format.SANDWICH,
                    g -> control(g, RunControl.LOW_POSITIVE),
                    "repeat",
                    "repeat"));

    private static Given positive(Given given) {
        return given.with(g -> g.strip = Given.positive(g.format));
    }

    private static Given control(Given given, RunControl control) {
        return given.with(g -> g.control = Optional.of(control)).with(g -> g.reason = Optional.empty());
    }

    private static void at(Given given, Route route) {
        given.route = route;
        if (route.swab()) {
            given.taken = Quantity.of("100", Unit.CM2);
        }
    }

    private static String codes(Verdict verdict) {
        return verdict.owed().stream().sorted().map(Owed::code).collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @EnumSource
    void followsFromOutcomeRouteAndReason(Route route) {
        for (Row row : ROWS) {
            assertThat(row.owed(route)).as(row.when()).isEqualTo(route.food() ? row.food() : row.surface());
        }
    }

    /** Common practice, no source: dilute wherever much of it may be there. */
    @ParameterizedTest
    @CsvSource({
        "before-cleaning, true",
        "after-cleaning, false",
        "changeover, false",
        "start-up, false",
        "first-off, false",
        "periodic, false",
        "complaint, false",
        "enquiry, false",
        "control, false",
        "raw-material, true",
        "rework, true",
        "other, true"
    })
    void asksForDilutionsWhereMuchAllergenIsPlausible(String reason, boolean owed) {
        Given given = new Given(Format.SANDWICH).with(g -> g.reason = Optional.of(Coded.of(Reason.class, reason)));
        Verdict verdict = given.judge();
        assertThat(verdict.owed()).isEqualTo(owed ? Set.of(Owed.REPEAT_DILUTED) : Set.of());
        assertThat(verdict.findings()).extracting(Finding::rule).containsExactly("format.no-hook-line");
        assertThat(verdict.findings().get(0).asked()).isEqualTo(owed ? "×10 and ×100" : "a hook line");
        for (Format other : List.of(Format.SANDWICH_HOOK, Format.COMPETITIVE)) {
            given.format = other;
            given.strip = Given.negative(other);
            assertThat(given.judge().owed()).isEmpty();
            assertThat(given.judge().findings()).isEmpty();
        }
    }

    @Test
    void speaksOfTheHookOnlyWhereANegativeStands() {
        Given given = new Given(Format.SANDWICH).with(g -> g.read = Optional.empty());
        assertThat(given.judge().findings()).extracting(Finding::rule).containsExactly("time.not-stated");
        Given positive = new Given(Format.SANDWICH).with(g -> g.strip = Given.strip(Format.SANDWICH, Seen.FAINT));
        assertThat(positive.judge().findings()).isEmpty();
    }

    @Test
    void repeatsAControlThatIsInvalid() {
        for (RunControl control : RunControl.values()) {
            Given given = new Given(Format.SANDWICH)
                    .with(g -> control(g, control))
                    .with(g -> g.read = Optional.empty())
                    .with(g -> g.visual = Optional.of(Visual.SOILED));
            assertThat(given.judge().owed()).containsExactly(Owed.REPEAT);
        }
    }

    @Test
    void doesNotCleanAVisiblyCleanSurface() {
        Given given = new Given(Format.SANDWICH_HOOK).with(g -> g.visual = Optional.of(Visual.CLEAN));
        assertThat(given.judge().owed()).isEmpty();
        assertThat(given.judge().findings()).isEmpty();
    }
}
