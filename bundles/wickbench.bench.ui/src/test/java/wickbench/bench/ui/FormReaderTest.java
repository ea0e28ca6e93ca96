package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.method.Method;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.bench.run.Clean;
import wickbench.reading.MethodJson;

/** From what is typed to a reading, without a window. */
class FormReaderTest {
    private static final Instant NOW = Instant.parse("2026-03-10T09:00:00Z");
    private static final SiteClock CLOCK = new SiteClock(InstantSource.fixed(NOW), ZoneId.of("Europe/Vienna"));
    private final Map<Item, String> texts = new EnumMap<>(Item.class);
    private Method method;

    @BeforeEach
    void fill() throws IOException {
        method = MethodJson.read("method", Files.readString(TestHouse.DEMO.resolve("methods/hazelnut-swab-dry.json")))
                .orRefuse();
        texts.put(Item.METHOD, "hazelnut-swab-dry");
        texts.put(Item.OPERATOR, "Op-05");
        texts.put(Item.LOT, "HZ-1");
        texts.put(Item.SAMPLE, " L2-04 ");
        texts.put(Item.PLACE, "L2 kettle rim");
        texts.put(Item.REASON, "changeover");
        texts.put(Item.DILUTION, "1+9");
        texts.put(Item.AREA, "64,5");
        texts.put(Item.OUT_OF_FRIDGE, "9:20");
        texts.put(Item.EXTRACTED, "9:50");
        texts.put(Item.SHAKEN, "61");
        texts.put(Item.CLEAN, "wet clean 4");
        texts.put(Item.CLEANED_AT, "2026-03-10T08:30:00Z");
        texts.put(Item.OBSERVER, "op-07");
    }

    @Test
    void a_whole_form_gives_a_reading() {
        Reading reading = check().reading().orElseThrow();

        assertThat(reading.operator()).hasToString("op-05");
        assertThat(reading.sample().code()).isEqualTo("L2-04");
        assertThat(reading.sample().reason()).contains(Reason.CHANGEOVER);
        assertThat(reading.sample().dilution()).isEqualByComparingTo("10");
        assertThat(reading.sample().area().map(BigDecimal::toPlainString)).contains("64.5");
        assertThat(reading.observer()).contains(new PersonId("op-07"));
        assertThat(check().clean())
                .contains(new Clean(
                        Optional.of("wet clean 4"),
                        Optional.empty(),
                        Optional.of(Instant.parse("2026-03-10T08:30:00Z"))));
        assertThat(reading.times().shaken()).contains(Duration.ofSeconds(61));
        assertThat(reading.origin()).isEqualTo(new Reading.Origin.Bench());
        assertThat(reading.strip().lines().values()).containsOnly(Seen.DAMAGED);
    }

    @Test
    void what_is_blank_and_needed_is_named_in_the_order_of_the_form() {
        texts.put(Item.LOT, " ");
        texts.remove(Item.PLACE);

        assertThat(check().missing()).containsExactly("Kit lot", "Place");
        assertThat(check().wrong()).isEmpty();
    }

    @Test
    void start_and_reading_cannot_be_typed() {
        assertThat(check().reading().orElseThrow().times().started()).isEmpty();
        assertThat(check().reading().orElseThrow().times().read()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "EXTRACTED, 8.52, A time such as 8:06 or 2026-03-31 08:06",
        "CLEANED_AT, 25:00, A time such as 8:06 or 2026-03-31 08:06",
        "OUT_OF_FRIDGE, 10:30, Lies in the future; another day’s time needs its date",
        "DILUTION, 1:10, A number such as 7.5",
        "DILUTION, 0.5, 'How many times thinner: 10, or in parts 1+9'",
        "AREA, 0, An area above 0 cm²",
        "SHAKEN, 61.5, 'Whole seconds, from 0 to a day'",
        "OPERATOR, Ina Moos, 'A person’s id: small letters, digits, . _ -'"
    })
    void says_what_is_wrong_at_its_field(Item item, String typed, String complaint) {
        texts.put(item, typed);

        assertThat(check().wrong()).containsEntry(item, complaint);
        assertThat(check().reading()).isEmpty();
    }

    @Test
    void a_method_that_is_not_in_force_is_said_so() {
        FormCheck check = FormReader.check(new Typed(texts, Map.of()), Optional.empty(), CLOCK);

        assertThat(check.wrong()).containsEntry(Item.METHOD, "No such method is in force");
    }

    @Test
    void a_measurement_that_is_no_number_is_said_so() {
        FormCheck check = FormReader.check(new Typed(texts, Map.of("pH", "neutral")), Optional.of(method), CLOCK);

        assertThat(check.wrongChecks()).containsEntry("pH", "A number such as 7.5");
        assertThat(check.reading()).isEmpty();
    }

    private FormCheck check() {
        return FormReader.check(new Typed(texts, Map.of()), Optional.of(method), CLOCK);
    }
}
