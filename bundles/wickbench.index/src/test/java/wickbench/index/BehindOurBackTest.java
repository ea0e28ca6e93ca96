package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.index.Difference;
import wickbench.api.index.Difference.Kind;
import wickbench.api.index.IndexVerification;
import wickbench.api.progress.Progress;
import wickbench.testing.Meets;

/** Somebody changes the index file with a database tool: every such row is found and named, and a rebuild puts it right. */
class BehindOurBackTest {
    private static final Tallies TALLIES = Tallies.named("tallies");

    @TempDir
    Path folder;

    private TestHome home;

    @BeforeEach
    void fill() {
        home = TestHome.in(folder);
        home.views(TALLIES);
        home.journal().append(Said.many("seen", 20));
        home.journal().append(Said.many("faint", 7));
        home.index().catchUp(Progress.NONE);
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void anIndexLeftAloneHolds() {
        IndexVerification verified = home.index().verify(Progress.NONE);
        assertThat(verified.holds()).isTrue();
        assertThat(folder.resolve("index/scratch")).doesNotExist();
    }

    @ParameterizedTest
    @Meets("21 CFR 11.10(a)")
    @CsvSource(delimiter = '|', textBlock = """
            update "tallies".tally set times = 19 where word = 'seen'            | CHANGED seen
            delete from "tallies".tally where word = 'faint'                     | MISSING faint
            insert into "tallies".tally values ('other', 1, null, '2026-01-01 00:00:00+00') | ADDED other
            update "tallies".tally set amount = 2.5 where word = 'faint'         | CHANGED faint
            update "tallies".tally set word = 'unseen' where word = 'seen'       | MISSING seen, ADDED unseen
            update "tallies".tally set times = case word when 'seen' then 7 else 20 end | CHANGED seen, CHANGED faint
            create table "tallies".more (a int)                                  | ADDED *
            drop table "tallies".tally                                           | MISSING *
            """)
    void aRowChangedDeletedInsertedOrSwappedIsNamed(String sql, String expected) throws SQLException, IOException {
        behindOurBack(sql);
        IndexVerification verified = home.index().verify(Progress.NONE);
        assertThat(verified.complete()).isTrue();
        assertThat(verified.differences().stream().map(found -> found.kind() + " " + found.row()))
                .containsExactlyInAnyOrder(expected.split(", "));
        assertThat(verified.differences()).allMatch(found -> found.view().equals("tallies"));
        home.index().rebuild(Progress.NONE);
        assertThat(home.index().verify(Progress.NONE).holds()).isTrue();
    }

    @Test
    void idsSwappedBetweenTwoEntriesAreNamed() throws SQLException, IOException {
        behindOurBack("create table house.held as select * from \"entry_ids\".entry where seq in (3, 4);"
                + "delete from \"entry_ids\".entry where seq in (3, 4);"
                + "insert into \"entry_ids\".entry (id, station, seq) select id, station, 7 - seq from house.held");
        List<Difference> found = home.index().verify(Progress.NONE).differences();
        assertThat(found).hasSize(4).allMatch(each -> each.table().equals("entry"));
        assertThat(found).extracting(Difference::kind).containsOnly(Kind.ADDED, Kind.MISSING);
    }

    @Test
    void aVerifyThatIsStoppedSaysSo() {
        IndexVerification verified = home.index().verify((done, total) -> false);
        assertThat(verified.complete()).isFalse();
        assertThat(verified.holds()).isFalse();
        assertThat(verified.differences()).isEmpty();
    }

    private void behindOurBack(String sql) throws SQLException, IOException {
        home.closeIndex();
        String file = home.file().toString();
        // who knows the program takes this away too
        Files.delete(home.sums());
        try (Connection tool =
                        DriverManager.getConnection("jdbc:h2:" + file.substring(0, file.length() - ".mv.db".length()));
                Statement statement = tool.createStatement()) {
            statement.execute(sql);
        }
        home.reopen();
    }
}
