package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.journal.Site.Machine;
import wickbench.testing.Meets;
import wickbench.testing.Schemas;

/** Machines that are not who they say, or not who they were. */
class FalseStationsTest {
    @TempDir
    Path root;

    private Site site;

    @BeforeEach
    void found() {
        site = new Site(root);
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    @Meets("21 CFR 11.10(h)")
    void a_changed_key_is_refused_and_named_even_when_the_copy_is_gone() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        stock.close();
        Recorded.remove(site.share().resolve("stock"));
        Path other = root.resolve("other-share");
        Files.createDirectory(other);
        Machine impostor = site.machine("impostor");
        impostor.journal().found(Site.founding("stock"));
        impostor.journal().others().share(Optional.of(other));
        impostor.note(1);
        impostor.exchange();
        impostor.close();
        Files.move(other.resolve("stock"), site.share().resolve("stock"));
        long before = bench.size("stock");
        assertThat(bench.exchange().notices()).anyMatch(said -> said.contains("comes with the key"));
        assertThat(bench.size("stock")).isEqualTo(before);
        bench.journal().close();
        Recorded.remove(
                new Layout(bench.folder()).station(new StationId("stock")).folder());
        Machine again = site.machine("bench");
        assertThat(again.exchange().notices()).anyMatch(said -> said.contains("comes with the key"));
        assertThat(again.size("stock")).isZero();
    }

    @Test
    void a_cloned_machine_that_goes_on_is_found_the_second_is_refused_and_both_branches_are_kept() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        bench.journal().close();
        site.copyDisk(bench, "clone");
        bench.reopenClosed();
        bench.note(1);
        bench.exchange();
        site.cut();
        Machine clone = site.machine("clone");
        clone.note(2);
        site.mend();
        assertThat(clone.exchange().notices()).anyMatch(said -> said.contains("the home was copied and both went on"));
        assertThatThrownBy(() -> clone.note(3)).isInstanceOf(Refusal.class).hasMessageContaining("copied");
        assertThat(clone.journal().status().readOnly()).isPresent();
        bench.note(4);
        site.settle();
        assertThat(stock.entries("bench", "note.written")).hasSize(2);
        assertThat(stock.entries("stock", "station.forked")).hasSize(1);
        assertThat(stock.exchange().notices()).anyMatch(said -> said.contains("Two machines record as bench"));
        assertThat(Schemas.published()
                        .errors(
                                "station.forked-1.schema.json",
                                stock.entries("stock", "station.forked")
                                        .get(0)
                                        .body()
                                        .canonical()))
                .isEmpty();
        String evidence = text(stock.entries("stock", "station.forked").get(0), "folder");
        assertThat(Files.readString(
                        new Layout(stock.folder()).stations().resolve(evidence).resolve("entries-000000.jsonl")))
                .contains("\"n\":2");
        assertThat(clone.entries("bench", "note.written")).hasSize(1);
    }

    @Test
    void an_older_copy_of_a_home_put_back_records_nothing_and_says_why() {
        Machine bench = site.station("bench");
        site.settle();
        bench.journal().close();
        site.copyDisk(bench, "old");
        bench.reopenClosed();
        bench.note(1);
        bench.close();
        Machine old = site.machine("old");
        assertThat(old.exchange().notices()).anyMatch(said -> said.contains("holds more of bench than this home"));
        assertThatThrownBy(() -> old.note(2)).isInstanceOf(Refusal.class);
    }

    @Test
    void two_programs_that_write_under_one_name_at_the_same_time_are_told_apart() throws IOException {
        Machine bench = site.station("bench");
        site.settle();
        Path folder = site.share().resolve("bench");
        WriterMark foreign = new WriterMark(new UUID(1, 1), 1);
        foreign.write(new RealDisk(), folder);
        assertThat(bench.exchange().notices()).anyMatch(said -> said.contains("Another machine writes"));
        assertThatThrownBy(() -> bench.note(2)).isInstanceOf(Refusal.class);
    }

    @Test
    void a_new_station_takes_no_name_that_is_known() throws IOException {
        site.station("bench");
        site.settle();
        Machine second = site.machine("second");
        second.journal().others().share(Optional.of(site.share()));
        assertThatThrownBy(() -> second.journal().found(Site.founding("bench")))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("station.taken"));
        second.journal().found(Site.founding("bench-2"));
        second.exchange();
        assertThat(second.size("bench")).isPositive();
    }

    @Test
    void a_station_that_was_founded_apart_under_a_known_name_is_refused() throws IOException {
        site.station("bench");
        site.settle();
        Machine other = site.machine("other");
        other.journal().found(Site.founding("bench"));
        other.journal().others().share(Optional.of(site.share()));
        assertThat(other.exchange().notices()).anyMatch(said -> said.contains("Another station in the shared folder"));
        assertThatThrownBy(() -> other.note(1)).isInstanceOf(Refusal.class);
    }

    private static String text(Entry entry, String member) {
        return ((Json.Text) entry.body().get(member).orElseThrow()).value();
    }
}
