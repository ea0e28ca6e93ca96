package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.json.Json;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Method.Factor;
import wickbench.api.method.Method.Range;
import wickbench.api.method.Quantity;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.reading.MethodFiles.Change;

class MethodJsonTest {
    static Stream<String> names() {
        return MethodFiles.NAMES.stream();
    }

    static Stream<Change> changes() {
        return MethodFiles.changes().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void readsWhatItWrote(String name) {
        Method method = MethodJson.read(name + ".json", MethodFiles.text(name)).orRefuse();
        Json.Obj written = MethodJson.write(method);
        assertThat(MethodJson.read("again", written.canonical()).orRefuse()).isEqualTo(method);
        assertThat(MethodJson.read("again", written).orRefuse()).isEqualTo(method);
    }

    @ParameterizedTest
    @MethodSource("changes")
    void namesWhatIsWrong(Change change) {
        Checked<Method> read = MethodJson.read("m.json", change.method().canonical());
        assertThat(read.complaints().stream().map(Complaint::oneLine))
                .containsExactlyElementsOf(change.complaints().stream()
                        .map(complaint -> "m.json: " + complaint)
                        .toList());
    }

    @Test
    void keepsAllThatTheFileSays() {
        Method method =
                MethodJson.read("m.json", MethodFiles.text("rinse-hook")).orRefuse();
        assertThat(method.ref()).hasToString("almond-rinse v1");
        assertThat(method.format()).isEqualTo(Format.SANDWICH_HOOK);
        assertThat(method.marks().get(LineRole.HOOK)).isEqualTo("H");
        assertThat(method.limit().value()).isEqualTo(Quantity.of("0.5", Unit.UG_PER_ML));
        assertThat(method.limit().probability()).contains(new BigDecimal("0.95"));
        assertThat(method.positiveFrom()).contains(new BigDecimal("0.4"));
        assertThat(method.hookOnset()).contains(new BigDecimal("900"));
        assertThat(method.timing().develop()).isEqualTo(Duration.ofMinutes(5));
        assertThat(method.timing().extractHold()).contains(Duration.ofHours(3));
        assertThat(method.preChecks().get(0).range().high()).isEqualTo(new BigDecimal(8));
        assertThat(method.steps().get(1).caution()).contains("Drain down first.");
        assertThat(method.target().notSeen()).containsExactly("almond oil");
        assertThat(method.cautions()).hasSize(1);
        assertThat(method.storage()).contains(new Range(new BigDecimal(2), new BigDecimal(8), Unit.CELSIUS));
        assertThat(method.target().factors())
                .containsExactly(
                        new Factor(Basis.WHOLE_FOOD_DRIED, new BigDecimal("4.7"), "invented, as the whole plant"));
    }

    @Test
    void writesNoEmptyLists() {
        Method method = MethodJson.read("m.json", MethodFiles.text("swab")).orRefuse();
        assertThat(MethodJson.write(method).members()).doesNotContainKeys("pre_checks", "steps", "cautions");
    }

    @Test
    void readsWhatElseCanBeSaid() {
        Method swab = MethodJson.read("m.json", MethodFiles.text("swab")).orRefuse();
        assertThat(swab.timing().window()).isEqualTo(Duration.ofMillis(60_500));
        assertThat(swab.limit().value().unit()).isEqualTo(Unit.UG_PER_ML);
        assertThat(swab.storage()).isEqualTo(Optional.empty());
        Method food = MethodJson.read("m.json", MethodFiles.text("food-solid")).orRefuse();
        assertThat(food.faintTest()).contains(Seen.NOT_SEEN);
        assertThat(food.timing().shake()).contains(Duration.ZERO);
    }

    @Test
    void namesTheLineOfWhatIsNoJson() {
        List<Complaint> complaints = MethodJson.read("m.json", "{\n\"id\": }").complaints();
        assertThat(complaints).hasSize(1);
        assertThat(complaints.get(0).oneLine()).startsWith("m.json:2: not JSON: ");
        assertThat(MethodJson.read("m.json", "[]").complaints())
                .containsExactly(Complaint.of("m.json", "expected a JSON object"));
    }
}
