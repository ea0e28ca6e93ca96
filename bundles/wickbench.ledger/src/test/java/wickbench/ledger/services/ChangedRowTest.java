package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.sql.SQLException;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.method.Seen;
import wickbench.api.progress.Progress;
import wickbench.api.reading.RecordedReading;
import wickbench.testing.DatabaseTool;

/** A result's row changed with a database tool: whoever looks at it is told, and sees what the journal says. */
class ChangedRowTest {
    private TestSite site;
    private Entry positive;
    private Entry corrected;

    @BeforeEach
    void record() throws IOException {
        site = TestSite.made();
        positive = site.record(seen("S-2", Seen.SEEN));
        corrected = site.record(seen("S-3", Seen.NOT_SEEN));
        site.correct(corrected.id(), seen("S-3", Seen.SEEN));
        site.index.catchUp(Progress.NONE);
    }

    private static RecordedReading seen(String sample, Seen test) {
        return Strips.Plain.negative(sample).seen(Seen.SEEN, test).judged();
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void resultsLeftAloneAreAsRecorded() {
        assertThat(site.results.find(positive.id()).orElseThrow().asRecorded()).isTrue();
        assertThat(site.results.find(corrected.id()).orElseThrow().asRecorded()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "outcome = 'negative'",
                "sign = true",
                "held = false",
                "sample = 'S-9'",
                "place = 'elsewhere'",
                "batch = 'B-9'",
                "lot = 'Z99'",
                "operator = 'op-09'",
                "method_version = 2",
                "first_by = 'op-09'",
                "findings = 3",
                "corrections = 1",
                "started = null"
            })
    void aRowThatSaysOtherwiseIsTold(String change) throws Exception {
        behindOurBack("update \"ledger\".statement set " + change + " where id = '" + positive.id() + "'");
        assertThat(site.results.find(positive.id()).orElseThrow().asRecorded()).isFalse();
        assertThat(new DetailText(site.site.now(), Optional.empty(), Object::toString)
                        .lines(site.results.find(positive.id()).orElseThrow()))
                .anyMatch(line -> line.contains("The list says otherwise of this result than the journal"))
                .anyMatch(line -> line.contains("Positive"))
                .anyMatch(line -> line.contains("Held: line and product"));
        assertThat(site.index.verify(Progress.NONE).differences())
                .singleElement()
                .matches(
                        found -> found.row().equals("bench-1, " + positive.ref().seq()));
    }

    @Test
    void aRowOfNoEntryIsRefused() throws Exception {
        behindOurBack("update \"ledger\".statement set seq = 999 where id = '" + positive.id() + "'");
        assertThatThrownBy(() -> site.results.find(positive.id()))
                .isInstanceOfSatisfying(
                        Refusal.class, no -> assertThat(no.code()).isEqualTo("ledger.unrecorded"))
                .hasMessageContaining("bench-1:999");
    }

    private void behindOurBack(String sql) throws SQLException, IOException {
        site.index.close();
        DatabaseTool.change(site.home.folder(), sql);
    }
}
