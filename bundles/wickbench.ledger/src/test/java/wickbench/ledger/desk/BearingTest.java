package wickbench.ledger.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.clash.Clash;
import wickbench.api.clash.Settlement;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.journal.JournalFolder;

/** Which clashes hold a line back. */
class BearingTest {
    @TempDir
    private Path folder;

    private HomeFolder home;
    private JournalFolder journal;

    @BeforeEach
    void open() {
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("bench"), ZoneOffset.UTC, OptionalLong.empty()));
    }

    @AfterEach
    void close() {
        journal.close();
    }

    @Test
    void one_of_which_a_decision_names_the_line_does_of_whatever_kind() {
        EntryRef point = append("point.stated", Json.object().with("line", "L2"));
        EntryRef product = append("product.stated", Json.object().with("lines", Json.texts(List.of("L1", "L2"))));
        EntryRef retired = append("plant.retired", Json.object().with("id", "oat"));
        assertThat(holds("L2", "plant.point:rim", point, retired)).isTrue();
        assertThat(holds("L1", "plant.point:rim", point, retired)).isFalse();
        assertThat(holds("L1", "plant.product:oat", product, retired)).isTrue();
        assertThat(holds("L3", "plant.product:oat", product, retired)).isFalse();
    }

    @Test
    void settlements_that_differ_speak_of_what_they_settle() {
        EntryRef one = append("point.stated", Json.object().with("line", "L2"));
        EntryRef other = append("point.stated", Json.object().with("line", "L2").with("drawn", true));
        EntryRef first =
                append(Settlement.KIND, new Settlement("plant.point:rim", one, List.of(one, other), "so").body());
        EntryRef second =
                append(Settlement.KIND, new Settlement("plant.point:rim", other, List.of(one, other), "no").body());
        assertThat(holds("L2", "plant.point:rim", first, second)).isTrue();
        assertThat(holds("L1", "plant.point:rim", first, second)).isFalse();
    }

    @Test
    void one_on_its_plan_does_by_its_subject() {
        EntryRef one = append("something", Json.object());
        assertThat(holds("L2", ActsView.PLAN + "L2", one, one)).isTrue();
        assertThat(holds("L2", "people.person:p-01", one, one)).isFalse();
    }

    private boolean holds(String line, String subject, EntryRef... decisions) {
        Bearing bearing = Bearing.on(journal, List.of(line), List.of(), List.of());
        return !bearing.of(List.of(new Clash(subject, List.of(decisions)))).isEmpty();
    }

    private EntryRef append(String kind, Json.Obj body) {
        return journal.append(List.of(new Draft(Draft.randomId(home.chance()), new PersonId("lead"), kind, 1, body)))
                .get(0)
                .ref();
    }
}
