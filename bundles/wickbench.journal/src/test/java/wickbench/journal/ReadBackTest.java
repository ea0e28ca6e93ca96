package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/** What is about to be written is read back from its own bytes, and must say what was to be written. */
class ReadBackTest {
    private static final Hash LEAF = Hash.of(new byte[32]);

    @Provide
    Arbitrary<Json.Obj> bodies() {
        Arbitrary<Json> texts = Arbitraries.strings()
                .withCharRange('\u0000', '\u007f')
                .withChars("\u00e9\u20ac\u2028\ufeff")
                .ofMaxLength(6)
                .map(Json.Text::new);
        Arbitrary<Json> numbers = Combinators.combine(
                        Arbitraries.longs().between(-999_999_999_999_999L, 999_999_999_999_999L),
                        Arbitraries.integers().between(-40, 40))
                .as((digits, scale) -> new Json.Num(BigDecimal.valueOf(digits, scale)));
        Arbitrary<Json> plain = Arbitraries.oneOf(
                texts, numbers, Arbitraries.of(new Json.Bool(true), new Json.Bool(false), Json.Null.NULL));
        Arbitrary<Json> lists = plain.list().ofMaxSize(3).map(Json::array);
        Arbitrary<Json> values = Arbitraries.oneOf(plain, lists, objects(plain).map(each -> each));
        return objects(values);
    }

    private static Arbitrary<Json.Obj> objects(Arbitrary<Json> values) {
        return Arbitraries.maps(Arbitraries.strings().ascii().ofMaxLength(3), values)
                .ofMaxSize(5)
                .map(Json.Obj::new);
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void whatReadsAsItWasToBeWrittenIsInCanonicalFormToTheByte(@ForAll("bodies") Json.Obj body) {
        Entry entry = entry("note.written", body);
        Leaf line = new Leaf(EntryLine.write(entry), LEAF);
        assertThat(EntryLine.readBack(entry, line).orRefuse()).isEqualTo(entry.withLeaf(LEAF));
        assertThat(EntryLine.readStrictly("line", line.line(), LEAF).orRefuse()).isEqualTo(entry.withLeaf(LEAF));
    }

    @Example
    void aLineThatSaysAnythingElseIsRefused() {
        Json.Obj body = Json.object().with("n", 1).with("text", "clear");
        Entry entry = entry("note.written", body);
        for (Entry other : List.of(
                entry("note.struck", body),
                entry("note.written", body.with("n", 2)),
                entry("note.written", body.with("more", "")),
                entry("note.written", Json.object()))) {
            Leaf line = new Leaf(EntryLine.write(other), LEAF);
            assertThat(EntryLine.readBack(entry, line)).isInstanceOf(Checked.Bad.class);
        }
    }

    private static Entry entry(String kind, Json.Obj body) {
        return new Entry(
                new EntryRef(Recorded.STATION, 41),
                new UUID(1, 2),
                Kept.NOTHING.leaf(),
                Instant.parse("2026-03-31T08:05:00.120Z"),
                ZoneOffset.ofHoursMinutes(5, 30),
                new PersonId("rivera"),
                kind,
                3,
                body,
                Kept.NOTHING.leaf());
    }
}
