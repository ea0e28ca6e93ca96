package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.method.Seen;
import wickbench.bench.BenchView;
import wickbench.bench.owed.OwedDesk;
import wickbench.bench.owed.OwedView;
import wickbench.ledger.Filter;
import wickbench.ledger.InDoubt;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Sort;
import wickbench.ledger.services.Strips.Plain;
import wickbench.testing.HeardTerminal;

/** Negatives in doubt, as the ledger shows them and lets them be decided on. */
class InDoubtTest {
    private static final LotId LOT = new LotId("A17");

    private TestSite site;
    private OwedDesk owed;
    private HeardTerminal printed;

    @BeforeEach
    void open() throws IOException {
        site = new TestSite(
                Files.createTempDirectory("wickbench-ledger"), new LedgerView(), new BenchView(), new OwedView());
        owed = new OwedDesk(site.journal, site.index, (act, draft, passphrase) -> draft);
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void a_method_withdrawn_puts_in_doubt_what_was_read_by_it_while_it_was_in_force() {
        site.shelf.issue(Strips.method("hazelnut-rinse"), TestSite.WRITER);
        Instant issued = site.home.clock().instant();
        Entry before = site.record(
                Plain.negative("S-1").at(issued.minusSeconds(86_400)).judged());
        Entry since =
                site.record(Plain.negative("S-2").at(issued.plusSeconds(60)).judged());
        site.shelf.withdraw(new MethodId("hazelnut-rinse"), "the kit misses roasted nuts", TestSite.WRITER);
        assertThat(site.results.find(since.id()).orElseThrow().row().inDoubt()).isTrue();
        assertThat(site.results.find(since.id()).orElseThrow().doubts())
                .extracting(InDoubt::cause)
                .containsExactly("method.withdrawn");
        assertThat(site.results.find(before.id()).orElseThrow().row().inDoubt()).isFalse();
    }

    @Test
    void a_lot_rejected_later_marks_its_negatives_and_only_those() {
        Entry negative = site.record(Plain.negative("S-1").judged());
        site.record(Plain.negative("S-2").seen(Seen.SEEN, Seen.SEEN).judged());
        assertThat(touched()).isEmpty();

        Entry rejected = doubt("lot.rejected", Doubt.ofLot("lot.rejected", LOT, Optional.empty()));

        assertThat(touched()).containsExactly(negative.id());
        assertThat(site.results.count(Filter.ALL.onlyInDoubt(true))).isEqualTo(1);
        assertThat(site.results.find(negative.id()).orElseThrow().doubts())
                .extracting(InDoubt::entry, InDoubt::cause, InDoubt::open)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(rejected.ref(), "lot.rejected", true));
    }

    @Test
    void it_does_not_matter_which_came_first_nor_of_which_kind_the_entry_is() {
        doubt("something.nobody-knows-here", Doubt.ofOperator("operator.suspended", Strips.OPERATOR, Optional.empty()));
        Entry negative = site.record(Plain.negative("S-1").judged());

        assertThat(touched()).containsExactly(negative.id());
    }

    @Test
    void a_corrected_result_is_in_doubt_by_what_it_says_now() {
        Entry positive =
                site.record(Plain.negative("S-1").seen(Seen.SEEN, Seen.SEEN).judged());
        Entry invalid = site.record(
                Plain.negative("S-2").seen(Seen.NOT_SEEN, Seen.NOT_SEEN).judged());
        doubt("lot.rejected", Doubt.ofLot("lot.rejected", LOT, Optional.empty()));
        assertThat(touched()).isEmpty();

        site.correct(invalid.id(), Plain.negative("S-2").judged());
        site.correct(positive.id(), Plain.negative("S-1").judged());

        assertThat(touched()).containsExactly(invalid.id());
    }

    @Test
    void a_release_ends_it_for_strips_started_later_and_for_no_other() {
        Entry before = site.record(Plain.negative("S-1").at(at("08:00")).judged());
        site.record(Plain.negative("S-2").at(at("12:00")).judged());
        Entry warm = doubt("lot.quarantined", Doubt.ofLot("lot.storage", LOT, Optional.of(at("06:00"))));
        assertThat(touched()).hasSize(2);

        append("lot.released", new Trust(List.of(warm.id()), at("10:00")).into(Json.object()));

        assertThat(touched()).containsExactly(before.id());
    }

    @Test
    void one_result_is_decided_on_by_the_command_and_a_later_doubt_opens_it_again() {
        Entry negative = site.record(Plain.negative("S-1").judged());
        Entry other = site.record(Plain.negative("S-2").judged());
        doubt("lot.quarantined", Doubt.ofLot("lot.storage", LOT, Optional.empty()));

        assertThat(run("decide", negative.ref().toString(), "--reason", "tested again from the kept sample"))
                .isZero();
        assertThat(touched()).containsExactly(other.id());
        run("show", negative.ref().toString());
        assertThat(printed.printed()).anyMatch(line -> line.contains("decided by bench-1:"));

        doubt("lot.rejected", Doubt.ofLot("lot.rejected", LOT, Optional.empty()));
        assertThat(touched()).containsExactlyInAnyOrder(negative.id(), other.id());
    }

    @Test
    void all_that_one_entry_doubts_is_decided_on_at_once_but_not_what_was_not_known() {
        site.record(Plain.negative("S-1").judged());
        site.record(Plain.negative("S-2").judged());
        Entry rejected = doubt("lot.rejected", Doubt.ofLot("lot.rejected", LOT, Optional.empty()));

        assertThat(run("decide", rejected.ref().toString(), "--reason", "batches were held anyway"))
                .isZero();
        assertThat(touched()).isEmpty();
        assertThat(owed.open()).isEmpty();

        Entry late = site.record(Plain.negative("S-3").judged());
        assertThat(touched()).containsExactly(late.id());
    }

    @Test
    void who_read_one_of_the_strips_does_not_decide() {
        Entry negative = site.record(Plain.negative("S-1").judged());
        Entry rejected = doubt("lot.rejected", Doubt.ofLot("lot.rejected", LOT, Optional.empty()));

        printed = HeardTerminal.of(Strips.OPERATOR, false);
        assertThat(execute("decide", rejected.ref().toString(), "--reason", "all is fine"))
                .isEqualTo(3);
        assertThat(touched()).containsExactly(negative.id());
    }

    @Test
    void the_list_the_detail_and_the_machine_say_it() {
        Entry negative = site.record(Plain.negative("S-1").judged());
        Entry rejected = doubt("lot.rejected", Doubt.ofLot("lot.rejected", LOT, Optional.empty()));

        run("list", "--in-doubt");
        assertThat(printed.printed().get(1)).contains("Negative, in doubt");
        run("show", negative.ref().toString());
        assertThat(printed.printed())
                .contains("  In doubt: until an authorised person decides, take it for no Negative.")
                .anyMatch(line -> line.contains(rejected.ref() + "  ") && line.contains("its lot was rejected"))
                .contains("    not decided");
        printed = HeardTerminal.of(TestSite.WRITER, true);
        execute("list", "--in-doubt");
        assertThat(printed.printed()).singleElement().asString().contains("\"in_doubt\":true");
    }

    @Test
    void what_is_not_in_doubt_and_what_is_no_entry_is_not_decided_on() {
        Entry negative = site.record(Plain.negative("S-1").judged());

        assertThat(run("decide", negative.ref().toString(), "--reason", "x")).isEqualTo(3);
        assertThat(run("decide", "bench-1:99", "--reason", "x")).isEqualTo(2);
        assertThat(printed.notes()).containsExactly("ID: there is no entry bench-1:99");
        assertThat(run("decide", "nonsense", "--reason", "x")).isEqualTo(2);
        assertThat(run("decide", negative.ref().toString(), "--reason", " ")).isEqualTo(2);
    }

    private List<UUID> touched() {
        return site.results.page(Filter.ALL.onlyInDoubt(true), Sort.NEWEST_FIRST, Optional.empty(), 100).rows().stream()
                .map(ResultRow::id)
                .toList();
    }

    private Entry doubt(String kind, Doubt doubt) {
        return append(kind, Doubt.into(Json.object(), List.of(doubt)));
    }

    private Entry append(String kind, Json.Obj body) {
        return site.journal
                .append(List.of(new Draft(Draft.randomId(site.home.chance()), TestSite.WRITER, kind, 1, body)))
                .get(0);
    }

    private static Instant at(String time) {
        return Instant.parse("2026-03-01T" + time + ":00Z");
    }

    private int run(String... arguments) {
        printed = HeardTerminal.of(TestSite.WRITER, false);
        return execute(arguments);
    }

    private int execute(String... arguments) {
        Object command = new LedgerCommand(
                site.results,
                site.doors(Optional.of(owed)),
                new ResultExport(site.results, List.of()),
                printed,
                new Print(printed, site.journal, site.site, new PersonNames(List.of())),
                new ActsPrint(printed, site.site, site.home.clock()));
        return new CommandLine(command)
                .setExecutionExceptionHandler((e, called, result) -> {
                    printed.note(e.getMessage());
                    assertThat(e).isInstanceOfAny(BadInput.class, Refusal.class);
                    return e instanceof BadInput ? 2 : 3;
                })
                .execute(arguments);
    }
}
