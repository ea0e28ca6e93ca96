package wickbench.stock.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.LOT;
import static wickbench.stock.room.StockHome.START;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.method.MethodRef;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Severity;
import wickbench.stock.Delivery;
import wickbench.stock.Due;
import wickbench.stock.Lot;

/** The insert in the box, held against the one by which the issued methods are written. */
class InsertTest {
    @TempDir
    private Path folder;

    private StockHome home;

    @BeforeEach
    void open() {
        home = new StockHome(folder).furnished();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void the_issued_method_governs_and_the_kits_definition_only_where_no_method_states_it() {
        assertThat(home.room.inserts(StockHome.KIT)).containsExactly("3");
        home.after(Duration.ofDays(1)).methods.issue(StockHome.method(2, "4"), KEEPER.who());
        assertThat(home.room.inserts(StockHome.KIT)).containsExactly("4");
        assertThat(home.shelves.inserts(StockHome.KIT, START.plusSeconds(60))).containsExactly("3");
        home.after(Duration.ofDays(1)).methods.withdraw(StockHome.method().ref().id(), "a new kit", KEEPER.who());
        assertThat(home.room.inserts(StockHome.KIT)).containsExactly("3");
        home.after(Duration.ofDays(1)).methods.issue(StockHome.method(3, "5"), KEEPER.who());
        assertThat(home.room.inserts(StockHome.KIT)).containsExactly("5");
        assertThat(home.room.inserts("nobody's kit")).isEmpty();
    }

    @Test
    void the_revision_is_asked_for_where_there_is_one_to_compare_with() {
        assertThatThrownBy(() -> receive(Optional.empty()))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("written by revision 3");
        assertThat(home.room.lots(home.clock.instant())).isEmpty();
    }

    @Test
    void a_differing_one_is_kept_with_the_lot_due_and_minded_at_the_bench_until_the_method_is_issued_anew() {
        Lot lot = receive(Optional.of("4"));
        assertThat(lot.otherInsert()).isTrue();
        assertThat(lot.inserts()).containsExactly("3");
        assertThat(home.room.history(LOT).get(0).facts())
                .containsEntry("insert", "4")
                .containsEntry("insert_compared", "3");
        home.keeping.waive(LOT, "for the test", KEEPER);
        assertThat(dues()).contains(tuple(Due.What.INSERT, "HZ-1"));
        home.after(Duration.ofHours(2));
        var verdict = home.read(LOT).reading().verdict();
        assertThat(verdict.outcome()).isEqualTo(Outcome.NEGATIVE);
        assertThat(verdict.findings())
                .extracting(found -> found.rule(), found -> found.severity())
                .containsExactly(
                        tuple("lot.other-insert", Severity.CAUTION), tuple("training-not-checked", Severity.CAUTION));

        home.after(Duration.ofDays(1)).methods.issue(StockHome.method(2, "4"), KEEPER.who());
        assertThat(home.lot(LOT).otherInsert()).isFalse();
        assertThat(dues()).doesNotContain(tuple(Due.What.INSERT, "HZ-1"));
        home.after(Duration.ofHours(1));
        assertThat(home.read(LOT).reading().verdict().findings())
                .extracting(found -> found.rule())
                .doesNotContain("lot.other-insert");
        // what was compared then stays in the entry
        assertThat(home.room.history(LOT).get(0).facts()).containsEntry("insert_compared", "3");
    }

    @Test
    void versions_issued_by_two_stations_are_all_named() {
        MethodRef ref = StockHome.method().ref();
        List<Inserts.Issue> of = new ArrayList<>();
        for (String station : List.of("b", "a")) {
            of.add(new Inserts.Issue(
                    new EntryRef(new StationId(station), 1), ref, StockHome.KIT, Optional.of(station), START));
        }
        Inserts inserts = new Inserts(of, List.of());
        assertThat(inserts.of(ref, StockHome.kit())).containsExactly("a", "b");
        assertThat(inserts.of(StockHome.kit(), START)).containsExactly("b");
        assertThat(inserts.of(StockHome.kit(), START.minusMillis(1))).containsExactly("3");
    }

    private List<Tuple> dues() {
        return home.room.due(home.clock.instant(), 14).stream()
                .map(due -> tuple(due.what(), due.subject()))
                .toList();
    }

    private Lot receive(Optional<String> insert) {
        Delivery box = home.delivery(LOT, "2026-12-31", 1);
        return home.keeping.receive(
                new Delivery(
                        box.kit(),
                        box.lot(),
                        LocalDate.parse("2026-12-31"),
                        1,
                        box.at(),
                        insert,
                        box.serial(),
                        box.produced(),
                        box.place(),
                        List.of(),
                        box.scan()),
                KEEPER);
    }
}
