package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.check.Complaint;
import wickbench.api.gate.Answer;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;

class RecordedReadingJsonTest {
    static RecordedReading recorded(Format format) {
        Given given = new Given(format)
                .with(g -> g.answers = List.of(
                        new Answer.Cleared("stock", Map.of("expiry", "2027-01-31")),
                        new Answer.Refused(
                                "training",
                                Map.of(),
                                List.of(
                                        new Answer.Reason("operator.lapsed", "2026-01-01", "a later date"),
                                        new Answer.Reason("operator.not-authorised", "", ""))),
                        new Answer.NotChecked("plant")));
        given.second = Optional.of(Given.positive(format));
        given.measured = Map.of("rinse pH", new BigDecimal("6.5"));
        given.area = Optional.of(new BigDecimal("25"));
        return new RecordedReading(given.reading(), given.method(), given.answers, given.judge());
    }

    /** Returns a reading whose JSON names each thing it says in one way. */
    static RecordedReading withFaintControl() {
        RecordedReading plain = recorded(Format.SANDWICH_HOOK);
        Given given = new Given(Format.SANDWICH_HOOK).with(g -> {
            g.route = Route.RINSE;
            g.taken = Quantity.of("1", Unit.ML);
            g.answers = plain.answers();
            g.measured = plain.reading().preChecks();
            g.strip = Given.with(Given.positive(g.format), LineRole.CONTROL, Seen.FAINT);
        });
        return new RecordedReading(given.reading(), given.method(), given.answers, given.judge());
    }

    static Stream<BadBodies.Body> wrongBodies() {
        return BadBodies.all().stream();
    }

    @ParameterizedTest
    @MethodSource("wrongBodies")
    void namesWhatIsWrong(BadBodies.Body wrong) {
        Json.Obj body = JsonReader.readObject("entry", wrong.text()).orRefuse();
        assertThat(RecordedReadingJson.read("entry", body).complaints().stream().map(Complaint::oneLine))
                .containsExactlyElementsOf(wrong.complaints().stream()
                        .map(line -> "entry: " + line)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({"7-7-7-7-7", "not an id", "00000000-0000-0005-0000-00000000000G"})
    void refusesWhatIsNoIdOfAnEntry(String id) {
        Json.Obj body = CorrectedReadingJson.write(
                        new CorrectedReading(new UUID(5, 7), "wrong tube", recorded(Format.SANDWICH)))
                .with("corrects", id);
        assertThat(CorrectedReadingJson.read("entry", body).complaints())
                .containsExactly(Complaint.of(
                        "entry",
                        "corrects",
                        "expected an id such as 00000000-0000-0000-0000-000000000001, found '" + id + "'"));
    }

    @Test
    void refusesAnAnswerThatSaysSomethingElse() {
        RecordedReading recorded = recorded(Format.SANDWICH);
        Json.Obj answer = Json.object().with("neighbour", "stock").with("says", "perhaps");
        Json.Obj body = RecordedReadingJson.write(recorded).with("answers", Json.array(List.of(answer)));
        assertThat(RecordedReadingJson.read("entry", body).complaints().stream().map(Complaint::oneLine))
                .anyMatch(line -> line.contains("expected one of cleared, refused, not-checked, found 'perhaps'"));
    }

    @Test
    void readsThatACheckWasNotRequiredWhetherSaidOrNot() {
        Json.Obj said = Json.object()
                .with("neighbour", "stock")
                .with("says", "not-checked")
                .with("required", false);
        Json.Obj body = RecordedReadingJson.write(recorded(Format.SANDWICH)).with("answers", Json.array(List.of(said)));
        assertThat(RecordedReadingJson.read("entry", body).orRefuse().answers())
                .containsExactly(new Answer.NotChecked("stock", false));
    }

    @Test
    void readsAReadingAndAVerdictByThemselves() {
        RecordedReading recorded = withFaintControl();
        assertThat(ReadingJson.read("r", parsed(ReadingJson.write(recorded.reading())))
                        .orRefuse())
                .isEqualTo(recorded.reading());
        assertThat(VerdictJson.read("v", parsed(VerdictJson.write(recorded.verdict())))
                        .orRefuse())
                .isEqualTo(recorded.verdict());
        assertThat(ReadingJson.read("r", Json.object()).complaints()).hasSize(8);
    }

    @ParameterizedTest
    @EnumSource
    void readsWhatItWrote(Format format) {
        RecordedReading recorded = recorded(format);
        assertThat(RecordedReadingJson.read("entry", parsed(RecordedReadingJson.write(recorded)))
                        .orRefuse())
                .isEqualTo(recorded);
    }

    @Test
    void readsACorrection() {
        CorrectedReading corrected = new CorrectedReading(new UUID(5, 7), "wrong tube", recorded(Format.SANDWICH));
        assertThat(CorrectedReadingJson.read("entry", parsed(CorrectedReadingJson.write(corrected)))
                        .orRefuse())
                .isEqualTo(corrected);
    }

    static Json.Obj parsed(Json.Obj written) {
        return JsonReader.readObject("entry", written.canonical()).orRefuse();
    }
}
