package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

class OrderTest {
    private static final Hash NOTHING = Hash.ofContent("");

    @Test
    void time_orders_what_nothing_else_does_and_station_and_place_order_what_was_written_at_once() {
        Entry late = entry("a", 1, 30, "x", 0);
        Entry early = entry("b", 1, 10, "x", 0);
        Entry one = entry("a", 0, 20, "x", 0);
        Entry other = entry("b", 2, 20, "x", 0);
        holds(List.of(early, one, other, late));
    }

    @Test
    void within_a_station_place_rules_whatever_its_clock_said() {
        Entry future = entry("a", 0, 2099, "x", 0);
        Entry back = entry("a", 1, 5, "x", 0);
        Entry other = entry("b", 0, 10, "x", 0);
        holds(List.of(other, future, back));
    }

    @Test
    void an_entry_comes_after_what_it_names_whatever_the_clocks_said() {
        Entry named = entry("b", 0, 100, "x", 0);
        Entry naming = entry("a", 0, 5, "x", 100);
        holds(List.of(named, naming));
    }

    @Test
    void what_waits_on_one_subject_holds_up_no_other() {
        Entry named = entry("b", 0, 100, "x", 0);
        Entry naming = entry("a", 0, 5, "x", 100);
        Entry behind = entry("a", 1, 6, "y", 0);
        holds(List.of(behind, named, naming));
    }

    @Test
    void entries_that_name_one_another_apply_by_time() {
        Entry one = entry("a", 0, 5, "x", 6);
        Entry other = entry("b", 0, 6, "x", 5);
        holds(List.of(one, other));
    }

    private static void holds(List<Entry> inOrder) {
        List<Entry> mixed = new ArrayList<>(inOrder);
        for (int seed = 0; seed < 24; seed++) {
            Collections.shuffle(mixed, new Random(seed));
            assertThat(Order.of(mixed, new Words())).isEqualTo(inOrder);
        }
    }

    /** Makes an entry whose id is its time, about a subject, which names the entry of another time. */
    private static Entry entry(String station, long seq, long at, String subject, long names) {
        return new Entry(
                new EntryRef(new StationId(station), seq),
                new UUID(0, at),
                NOTHING,
                Instant.ofEpochSecond(at),
                ZoneOffset.UTC,
                new PersonId("op-01"),
                "word.said",
                1,
                Json.object().with("word", subject).with("names", names),
                NOTHING);
    }

    private record Words() implements IndexView {
        @Override
        public String name() {
            return "words";
        }

        @Override
        public int version() {
            return 1;
        }

        @Override
        public List<String> tables() {
            return List.of();
        }

        @Override
        public Set<String> subjects(Entry entry) {
            return Set.of(((Json.Text) entry.body().get("word").orElseThrow()).value());
        }

        @Override
        public Set<UUID> names(Entry entry) {
            long named =
                    ((Json.Num) entry.body().get("names").orElseThrow()).value().longValueExact();
            return named == 0 ? Set.of() : Set.of(new UUID(0, named));
        }

        @Override
        public void apply(Entry entry, Rows rows) {
            throw new IllegalStateException("nothing is applied here");
        }
    }
}
