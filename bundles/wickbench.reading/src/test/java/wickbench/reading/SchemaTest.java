package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.method.Format;
import wickbench.api.method.Method;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.MethodFiles.Change;

/** The schemas against what is written, and the method schema against the method's own checks. */
class SchemaTest {
    private static final String BASE = "https://schemas.invalid/";
    private static final List<String> NAMES = List.of(
            "method-1.schema.json",
            "signature-1.schema.json",
            "reading.recorded-1.schema.json",
            "reading.corrected-1.schema.json");
    private static final Map<String, String> TEXTS =
            NAMES.stream().collect(Collectors.toMap(name -> BASE + name, name -> Golden.docs("formats/" + name)));
    private static final SchemaRegistry SCHEMAS =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(TEXTS));

    static Stream<String> names() {
        return MethodFiles.NAMES.stream();
    }

    static Stream<Change> changes() {
        return MethodFiles.changes().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void acceptsTheMethodsAndWhatIsWrittenOfThem(String name) {
        String text = MethodFiles.text(name);
        assertThat(errors("method-1.schema.json", text)).isEmpty();
        Method method = MethodJson.read(name, text).orRefuse();
        assertThat(errors("method-1.schema.json", MethodJson.write(method).canonical()))
                .isEmpty();
    }

    @Test
    void acceptsTheMethodsOfTheDemonstration() throws IOException {
        try (Stream<Path> files = Files.walk(Golden.docsFolder().resolveSibling("demo/methods"))) {
            List<Path> methods = files.filter(Files::isRegularFile).toList();
            assertThat(methods).hasSizeGreaterThan(3);
            for (Path method : methods) {
                String text = Files.readString(method);
                assertThat(errors("method-1.schema.json", text))
                        .as("%s", method)
                        .isEmpty();
                assertThat(MethodJson.read(method.toString(), text).complaints())
                        .isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("changes")
    void agreesWithTheMethodsChecks(Change change) {
        boolean good = change.good() || !change.schemaSees();
        assertThat(errors("method-1.schema.json", change.method().canonical()).isEmpty())
                .isEqualTo(good);
    }

    @ParameterizedTest
    @EnumSource
    void acceptsEveryRecordedReading(Format format) {
        RecordedReading plain = RecordedReadingJsonTest.recorded(format);
        assertAccepted(plain);
        Patterns.of(format)
                .forEach(pattern -> assertAccepted(recorded(new Given(format).with(g -> g.strip = pattern.strip()))));
        FindingsTable.ROWS.stream()
                .filter(row -> row.fits(format))
                .forEach(row -> assertAccepted(recorded(new Given(format).with(row.change()))));
        OwedTest.ROWS.forEach(row -> assertAccepted(recorded(new Given(row.format()).with(row.change()))));
    }

    @Test
    void acceptsEveryLevel() {
        LevelsTest.rows().forEach(row -> assertAccepted(recorded(row.given())));
    }

    private static RecordedReading recorded(Given given) {
        return new RecordedReading(given.reading(), given.method(), given.answers, given.judge());
    }

    private static void assertAccepted(RecordedReading recorded) {
        Json.Obj body = RecordedReadingJson.write(recorded);
        assertThat(errors("reading.recorded-1.schema.json", body.canonical())).isEmpty();
        CorrectedReading corrected = new CorrectedReading(new UUID(1, 2), "wrong tube", recorded);
        assertThat(errors(
                        "reading.corrected-1.schema.json",
                        CorrectedReadingJson.write(corrected).canonical()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("wrongBodies")
    void agreesWithTheReaderOnWrongBodies(BadBodies.Body wrong) {
        assertThat(errors("reading.recorded-1.schema.json", wrong.text())).isNotEmpty();
        assertThat(RecordedReadingJson.read(
                                "entry",
                                JsonReader.readObject("entry", wrong.text()).orRefuse())
                        .complaints())
                .isNotEmpty();
    }

    static Stream<BadBodies.Body> wrongBodies() {
        return BadBodies.all().stream().filter(body -> body.schemaSees());
    }

    private static List<Error> errors(String schema, String text) {
        Schema against = SCHEMAS.getSchema(SchemaLocation.of(BASE + schema));
        return against.validate(text, InputFormat.JSON);
    }
}
