package wickbench.api.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import wickbench.api.check.Checked;

/** What holds for every text, number and heap of bytes. */
class JsonPropertyTest {
    @Property
    void a_decimal_of_few_digits_survives_the_way_through_a_double(
            @ForAll @DoubleRange(min = -1e9, max = 1e9) @Scale(5) double value) {
        BigDecimal decimal = BigDecimal.valueOf(value);
        Json.Num number = new Json.Num(decimal);
        assertThat(Double.parseDouble(number.canonical())).isEqualTo(value);
        assertThat(new BigDecimal(number.canonical())).isEqualByComparingTo(decimal);
    }

    @Property
    void what_is_written_is_read_back_the_same(@ForAll String name, @ForAll String value, @ForAll int number) {
        if (CanonicalWriter.hasLoneSurrogate(name) || CanonicalWriter.hasLoneSurrogate(value)) {
            assertThatThrownBy(() -> Json.object().with(name, value)).isInstanceOf(IllegalArgumentException.class);
        } else {
            Json.Obj object = Json.object().with(name, value).with(name + "#", number);
            assertThat(JsonReader.read("text", object.canonical()).orRefuse()).isEqualTo(object);
        }
    }

    @Property
    void any_bytes_are_read_or_refused(@ForAll byte[] bytes) {
        assertThat(JsonReader.read("file", bytes)).isInstanceOf(Checked.class);
    }
}
