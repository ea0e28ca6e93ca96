package wickbench.journal.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.backup.BackupPlan;
import wickbench.api.journal.Checkpoint;
import wickbench.api.progress.Progress;
import wickbench.testing.ui.TestDesk;

/** The page Journal on a real home and a real window, by clicks and keys. */
class JournalPageTest {
    @TempDir
    private Path folder;

    private Path home;
    private TestHouse house;
    private TestDesk desk;
    private Hands hands;

    @BeforeEach
    void found() {
        home = folder.resolve("home");
        house = new TestHouse(home);
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    private void open() {
        desk = new TestDesk(false, 100, 1100, 1200, Optional.empty());
        JournalPart part = desk.open(parent -> new JournalPart(parent, desk, house.doors()));
        hands = new Hands(desk, part.page());
    }

    private String typed(Checkpoint made) {
        return made.station() + " " + made.size() + " " + made.root();
    }

    @Test
    void it_shows_what_is_recorded_and_under_which_seal() {
        house.record(0, 3);
        Checkpoint made = house.doors().journal().checkpoint().orElseThrow();
        open();
        assertThat(hands.words())
                .contains("4", "over all 4 entries", StationPanel.digits(made.root()), home.toString())
                .contains("Not verified since this page opened", "No back-up yet");
    }

    @Test
    void a_click_verifies_everything() {
        house.record(0, 3);
        open();
        hands.click("Verify everything");
        hands.awaitWord("Holds");
        assertThat(hands.words()).anyMatch(word -> word.startsWith("All 4 entries fit their chain"));
    }

    @Test
    void what_does_not_hold_is_named() throws IOException {
        house.record(0, 3);
        house.doors().journal().checkpoint();
        open();
        Path segment = home.resolve("journal/station-1/entries-000000.jsonl");
        Files.writeString(segment, Files.readString(segment).replace("\"n\":1", "\"n\":7"));
        hands.click("Verify everything");
        hands.awaitWord("Does not hold");
        assertThat(hands.words())
                .anyMatch(word -> word.contains("station-1:2-3: Entry 2 is not what entry 3 was chained to"));
    }

    @Test
    void a_home_that_contradicts_its_seal_still_opens_and_says_so() throws IOException {
        house.record(0, 3);
        house.close();
        Path note = home.resolve("journal/station-1/checkpoint");
        Files.writeString(note, Files.readString(note).replace("\n4\n", "\n5\n"));
        house = new TestHouse(home);
        open();
        assertThat(hands.words()).anyMatch(word -> word.contains("contradicts its seal"));
        assertThat(hands.button("Back up now").isEnabled()).isFalse();
        hands.click("Verify everything");
        hands.awaitWord("Does not hold");
    }

    @Test
    void an_empty_home_offers_nothing_that_cannot_be_done() {
        open();
        assertThat(hands.button("Verify everything").isEnabled()).isFalse();
        assertThat(hands.button("Back up now").isEnabled()).isFalse();
        assertThat(hands.words())
                .contains("none yet")
                .anyMatch(word -> word.startsWith("Nothing was ever recorded here."));
    }

    @Test
    void a_checkpoint_typed_by_keys_is_compared() {
        house.record(0, 3);
        String early = typed(house.doors().journal().checkpoint().orElseThrow());
        house.record(3, 2);
        open();
        hands.type(hands.fields().get(1), early);
        assertThat(hands.fields().get(1).getText()).isEqualTo(early);
        hands.click("Compare");
        hands.awaitWord("Consistent");
        assertThat(hands.words())
                .anyMatch(word -> word.contains("all 4 entries of the checkpoint unchanged, and 2 since"));
    }

    @Test
    void nothing_typed_is_told_below_the_field() {
        open();
        hands.click("Compare");
        assertThat(hands.words()).anyMatch(word -> word.startsWith("Paste the signed text"));
    }

    @Test
    void the_tab_key_leads_out_of_the_field_for_a_checkpoint() {
        house.record(0, 1);
        open();
        Text area = hands.fields().get(1);
        area.setFocus();
        desk.settle();
        hands.key('\t');
        desk.settle();
        assertThat(area.getDisplay().getFocusControl()).isSameAs(hands.button("Compare"));
        assertThat(area.getText()).isEmpty();
    }

    @Test
    void the_code_of_a_report_is_read_from_a_picture() throws Exception {
        house.record(0, 3);
        Path picture =
                Codes.save(house.doors().journal().checkpoint().orElseThrow().note(), folder.resolve("code.png"));
        house.record(3, 1);
        desk = new TestDesk(true, 100, 1100, 900, Optional.empty());
        ComparePanel[] panel = new ComparePanel[1];
        desk.open(parent -> {
            panel[0] = new ComparePanel(parent, desk, house.doors(), () -> {});
            desk.ready();
            return parent;
        });
        hands = new Hands(desk, desk.shell());
        panel[0].read(picture);
        hands.awaitWord("Consistent");
        assertThat(panel[0].draft()).startsWith("wickbench.invalid/station-1\n4\n");
        panel[0].read(Codes.blank(folder.resolve("blank.png")));
        hands.awaitWord("No code found");
        panel[0].read(Files.writeString(folder.resolve("text.png"), "no picture"));
        hands.awaitWord("Refused");
        assertThat(hands.words()).contains("text.png is no picture that can be read.");
    }

    @Test
    void a_home_is_backed_up_and_restored_elsewhere() {
        house.record(0, 3);
        open();
        List<Text> fields = hands.fields();
        hands.type(fields.get(2), folder.resolve("safe").toString());
        hands.click("Back up now");
        hands.awaitWord("Newest back-up: less than an hour ago");
        Path backup = house.doors().backups().state().last().orElseThrow().folder();
        assertThat(backup.getParent()).isEqualTo(folder.resolve("safe"));

        fields = hands.fields();
        fields.get(5).setText(backup.toString());
        fields.get(6).setText(folder.resolve("new").toString());
        house.record(3, 2);
        fields.get(7).setText(typed(house.doors().journal().checkpoint().orElseThrow()));
        hands.click("Restore");
        hands.awaitWord("Restored, but not everything");
        assertThat(hands.words()).anyMatch(word -> word.contains("the newest 2 are missing"));
        try (TestHouse restored = new TestHouse(folder.resolve("new"))) {
            assertThat(restored.doors().journal().verify(Progress.NONE).holds()).isTrue();
            assertThat(restored.doors().journal().status().size()).isEqualTo(4);
        }
    }

    @Test
    void a_path_that_begins_nowhere_and_a_home_that_holds_something_are_told() {
        house.record(0, 1);
        open();
        hands.click("Back up now");
        assertThat(hands.words()).contains("a whole path, from the root of the disk on");
        hands.fields().get(5).setText(folder.toString());
        hands.fields().get(6).setText(folder.resolve("new").toString());
        hands.click("Restore");
        hands.awaitWord("Refused");
        assertThat(hands.words()).anyMatch(word -> word.contains("is no whole back-up"));
    }

    @Test
    void a_plan_is_kept_and_taken_back() {
        house.record(0, 1);
        open();
        hands.fields().get(2).setText(folder.resolve("safe").toString());
        hands.fields().get(3).setText("x");
        hands.click("Make them by themselves while this window is open");
        hands.click("Keep this plan");
        assertThat(hands.words()).contains("a whole number");
        hands.fields().get(3).setText("7");
        hands.click("Keep this plan");
        desk.await(() -> house.doors().backups().state().plan().isPresent());
        assertThat(house.doors().backups().state().plan()).contains(new BackupPlan(folder.resolve("safe"), 7, 14));
        desk.await(() -> hands.button("Make them by themselves while this window is open")
                .getSelection());
        hands.click("Make them by themselves while this window is open");
        hands.click("Keep this plan");
        desk.await(() -> house.doors().backups().state().plan().isEmpty());
    }

    @Test
    void journals_are_shared_through_a_folder_and_no_longer() throws IOException {
        house.record(0, 2);
        Path share = Files.createDirectory(folder.resolve("share"));
        open();
        assertThat(hands.words()).contains("This station works alone.");
        hands.type(hands.fields().get(0), share.toString());
        hands.click("Share through this folder");
        hands.awaitWord("This station");
        desk.await(() -> desk.said().contains("Journals are exchanged through this folder from now on."));
        hands.click("Exchange now");
        hands.awaitWord("3 entries are there for the others");
        assertThat(share.resolve("station-1/entries-000000.jsonl")).exists();
        hands.click("Work alone");
        hands.awaitWord("This station works alone.");
    }

    @Test
    void a_folder_that_is_not_there_to_share_is_told() {
        house.record(0, 1);
        open();
        hands.fields().get(0).setText(folder.resolve("nowhere").toString());
        hands.click("Share through this folder");
        hands.awaitWord("Refused");
    }

    @Test
    void the_index_is_built_again() {
        house.record(0, 1);
        open();
        hands.click("Rebuild the index");
        desk.await(() -> desk.said().stream().anyMatch(word -> word.startsWith("The index is whole")));
    }
}
