package wickbench.stock.gs1;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ElementStringsTest {
    private static final int YEAR = 2026;
    private static final String GS = "\u001d";
    private static final String BOX = "0100614141123452" + "17271231" + "10LOT42" + GS + "21SN0001";

    @ParameterizedTest
    @ValueSource(
            strings = {
                BOX,
                "]C1" + BOX,
                "]d2" + BOX,
                "]Q3" + BOX,
                "]e0" + BOX,
                GS + BOX,
                "(01)00614141123452(17)271231(10)LOT42(21)SN0001",
                "0100614141123452" + "17271231" + "10LOT42\\x1d21SN0001",
                "0100614141123452" + "17271231" + "10LOT42\u241d21SN0001"
            })
    void a_box_is_read_in_every_form(String text) {
        Scan.Read read = (Scan.Read) ElementStrings.parse(text, YEAR);
        assertThat(read.value(Identifier.GTIN)).contains("00614141123452");
        assertThat(read.date(Identifier.EXPIRY)).contains(LocalDate.of(2027, 12, 31));
        assertThat(read.value(Identifier.LOT)).contains("LOT42");
        assertThat(read.value(Identifier.SERIAL)).contains("SN0001");
    }

    @Test
    void a_wrong_check_digit_is_refused() {
        assertThat(code("0100614141123453" + "17271231")).isEqualTo("check-digit");
    }

    @Test
    void a_lost_separator_is_asked_not_swallowed() {
        Scan scan = ElementStrings.parse("0100614141123452" + "17271231" + "10LOT42" + "21SN0001", YEAR);
        assertThat(scan).isInstanceOf(Scan.Doubtful.class);
        assertThat(((Scan.Doubtful) scan).elements())
                .extracting(Element::identifier)
                .containsExactly(Identifier.GTIN, Identifier.EXPIRY);
    }

    @Test
    void what_is_wrong_is_named() {
        assertThat(code("")).isEqualTo("empty");
        assertThat(code("99ABC")).isEqualTo("unknown");
        assertThat(code("(99)ABC")).isEqualTo("unknown");
        assertThat(code("17271331")).isEqualTo("date");
        assertThat(code("1727")).isEqualTo("form");
        assertThat(code("10A" + GS + "10B")).isEqualTo("twice");
        assertThat(code("10A\u202eB")).isEqualTo("character");
        assertThat(code("10A\u0000B")).isEqualTo("character");
        assertThat(code("10A B")).isEqualTo("character");
        assertThat(code("1".repeat(10_000))).isEqualTo("too-long");
        assertThat(code("]C1")).isEqualTo("empty");
        assertThat(code("10" + "X".repeat(21) + GS)).isEqualTo("form");
    }

    @Test
    void the_same_value_twice_is_one() {
        assertThat(ElementStrings.parse("10A" + GS + "10A" + GS, YEAR))
                .isEqualTo(new Scan.Read(List.of(new Element(Identifier.LOT, "A")), YEAR));
    }

    @Property
    void what_was_written_with_separators_is_read_as_it_was(@ForAll("elements") List<Element> elements) {
        String text = String.join(
                "",
                elements.stream()
                        .map(each -> each.identifier().digits() + each.value() + GS)
                        .toList());
        Scan expected = new Scan.Read(elements, YEAR);
        assertThat(ElementStrings.parse(text, YEAR)).isEqualTo(expected);
    }

    @Property(tries = 3000)
    void without_separators_nothing_is_ever_read_otherwise_than_it_was_written(
            @ForAll("elements") List<Element> elements) {
        String text = String.join(
                "",
                elements.stream()
                        .map(each -> each.identifier().digits() + each.value())
                        .toList());
        Scan scan = ElementStrings.parse(text, YEAR);
        if (scan instanceof Scan.Read read) {
            assertThat(read.elements()).isEqualTo(elements);
        } else if (scan instanceof Scan.Doubtful doubtful) {
            assertThat(elements).containsAll(doubtful.elements());
        } else {
            assertThat(scan).isInstanceOf(Scan.Refused.class);
        }
    }

    @Property
    void no_text_breaks_it_and_no_fact_needs_escaping(@ForAll String text) {
        Scan scan = ElementStrings.parse(text, YEAR);
        if (scan instanceof Scan.Refused refused) {
            assertThat(refused.reason().fact().chars()).noneMatch(Character::isISOControl);
        }
    }

    @Provide
    Arbitrary<List<Element>> elements() {
        Arbitrary<String> text = Arbitraries.strings()
                .withChars("0123456789ABLX-/")
                .ofMinLength(1)
                .ofMaxLength(12);
        Arbitrary<Element> lot = text.map(value -> new Element(Identifier.LOT, value));
        Arbitrary<Element> serial = text.map(value -> new Element(Identifier.SERIAL, value));
        Arbitrary<Element> count = Arbitraries.integers()
                .between(1, 99_999)
                .map(value -> new Element(Identifier.COUNT, String.valueOf(value)));
        Arbitrary<Element> expiry =
                Arbitraries.of("271231", "280200", "260115").map(value -> new Element(Identifier.EXPIRY, value));
        Arbitrary<Element> gtin = Arbitraries.longs()
                .between(0, 9_999_999_999_999L)
                .map(value -> String.format("%013d", value))
                .map(data -> new Element(Identifier.GTIN, data + CheckDigit.of(data)));
        return Combinators.combine(lot, serial, count, expiry, gtin)
                .as((one, two, three, four, five) -> List.of(one, two, three, four, five))
                .flatMap(all -> Arbitraries.shuffle(all))
                .flatMap(all -> Arbitraries.integers().between(1, all.size()).map(size ->
                        (List<Element>) new ArrayList<>(all.subList(0, size))));
    }

    private static String code(String text) {
        return ((Scan.Refused) ElementStrings.parse(text, YEAR)).reason().code();
    }
}
