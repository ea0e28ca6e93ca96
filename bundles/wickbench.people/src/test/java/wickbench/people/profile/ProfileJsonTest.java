package wickbench.people.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.check.Complaint;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

class ProfileJsonTest {
    @Test
    void whatIsWrittenReadsBack() {
        assertThat(ProfileJson.read("p.json", ProfileJson.write(Profiled.plain()))
                        .orRefuse())
                .isEqualTo(Profiled.plain());
    }

    @Test
    void theRuleForRunControlsReadsBack() {
        Json.Obj rule = Json.object().with("blank", "run").with("low-positive", "day");
        Json.Obj profile = Profiled.object().with("run_controls", rule);

        assertThat(ProfileJson.write(ProfileJson.read("p.json", profile).orRefuse())
                        .get("run_controls"))
                .contains(rule);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            zone                | "Europe/Nowhere"        | expected an IANA time zone such as Europe/Vienna, found 'Europe/Nowhere'
            plant               | ""                      | is blank
            plant               | 7                       | expected a text
            units               | ["mg/kg", "µg/kg"]      | µg/kg is a second unit for the same; name one
            units               | ["stone"]               | expected a unit (mg/kg, µg/kg, mg/L, µg/mL, µg/L, ng/mL, µg/100 cm², µg/swab, g, mL, cm², °C, pH, piece), found 'stone'
            required_checks     | ["Stock!"]              | expected a neighbour such as stock or training, found 'Stock!'
            required_signatures | ["method"]              | expected a kind of entry such as method.issued, found 'method'
            double_read         | 1.5                     | expected a part from 0 to 1, found 1.5
            double_read         | -0.1                    | expected a part from 0 to 1, found -0.1
            review_days         | 0                       | expected a whole number from 1 to 365, found 0
            review_days         | 1.5                     | expected a whole number, found 1.5
            retention_years     | 1                       | expected a whole number from 2 to 100, found 1
            outcome_order       | ["negative"]            | expected each of negative, positive, positive-above-range, invalid once
            outcome_order       | ["negative", "negative", "positive", "invalid"] | expected each of negative, positive, positive-above-range, invalid once
            run_controls.blank  | {"blank": "week"}       | expected one of run, day, found 'week'
            run_controls.blanc  | {"blanc": "run"}        | is not a field of this format
            waived_lot_checks   | [" "]                   | expected a kit by the name that the site gives it, found ' '
            colour              | "red"                   | is not a field of this format
            """)
    void namesWhatIsWrong(String field, String json, String text) {
        Json value = JsonReader.readObject("v", "{\"v\":" + json + "}")
                .orRefuse()
                .get("v")
                .orElseThrow();
        List<Complaint> complaints = ProfileJson.read(
                        "p.json", Profiled.object().with(field.split("\\.")[0], value))
                .complaints();
        assertThat(complaints).contains(Complaint.of("p.json", field, text));
    }

    @Test
    void everythingMissingIsNamedAtOnce() {
        assertThat(ProfileJson.read("p.json", "{}").complaints().stream().map(Complaint::field))
                .contains("plant", "zone", "double_read", "review_days", "outcome_order", "retention_years");
    }
}
