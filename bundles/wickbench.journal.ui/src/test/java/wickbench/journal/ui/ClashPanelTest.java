package wickbench.journal.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.people.PeopleView;
import wickbench.testing.ui.TestDesk;

/** What two stations decided differently, on the page of one of them. */
class ClashPanelTest {
    private static final PersonId ADA = new PersonId("p-01");

    @TempDir
    private Path folder;

    private TestHouse bench;
    private TestHouse quality;
    private TestDesk desk;
    private JournalPart part;
    private Hands hands;

    /** Lets two stations enrol one person with different roles, neither having seen the other do it. */
    @BeforeEach
    void decide() throws IOException {
        bench = house("bench");
        quality = house("quality");
        bench.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR, Role.REVIEWER), ADA);
        quality.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
    }

    private TestHouse house(String station) throws IOException {
        TestHouse house = new TestHouse(folder.resolve(station), List.of(new PeopleView()));
        house.doors().journal().found(new Founding(new StationId(station), ZoneOffset.UTC, OptionalLong.empty()));
        return house;
    }

    private void meet() throws IOException {
        Path share = Files.createDirectories(folder.resolve("share"));
        bench.doors().stations().share(Optional.of(share));
        quality.doors().stations().share(Optional.of(share));
        for (int round = 0; round < 3; round++) {
            bench.doors().stations().exchange();
            quality.doors().stations().exchange();
        }
    }

    @AfterEach
    void close() {
        desk.close();
        bench.close();
        quality.close();
    }

    private void open(Optional<PersonId> actor) {
        desk = new TestDesk(false, 100, 1100, 1200, actor);
        part = desk.open(parent -> new JournalPart(parent, desk, bench.doors()));
        hands = new Hands(desk, part.page());
    }

    @Test
    void a_clash_is_settled_on_the_page_with_a_reason() throws IOException {
        meet();
        open(Optional.of(ADA));
        String theirs =
                bench.doors().index().clashes().get(0).decisions().get(1).toString();
        assertThat(theirs).startsWith("quality:");
        assertThat(hands.words())
                .contains("Decided differently", "person:p-01 was decided differently on two stations.", theirs)
                .anyMatch(word -> word.startsWith("person.enrolled, by p-01, "));
        desk.picture("journal-clash");
        hands.click("Let " + theirs + " stand\u2026");
        Shell sheet = desk.shell().getShells()[0];
        Hands atSheet = new Hands(desk, (Composite) sheet);
        atSheet.fields().get(0).setText("agreed with quality");
        atSheet.button("Do it unsigned")
                .notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
        desk.await(() -> desk.said().contains("person:p-01 stands by " + theirs + " from now on."));
        desk.await(() -> !hands.words().contains("Decided differently"));
        assertThat(bench.doors().index().clashes()).isEmpty();
    }

    @Test
    void nobody_at_the_desk_sees_it_and_is_told_how_to_go_on() throws IOException {
        meet();
        open(Optional.empty());
        String ours = bench.doors().index().clashes().get(0).decisions().get(0).toString();
        assertThat(hands.button("Let " + ours + " stand\u2026").isEnabled()).isFalse();
        assertThat(hands.words()).contains("Sign in at the top to settle this.");
        desk.signIn(ADA);
        desk.await(() -> hands.button("Let " + ours + " stand\u2026").isEnabled());
    }

    @Test
    void a_clash_that_comes_in_while_the_page_is_open_is_shown_and_what_is_typed_stays() throws IOException {
        open(Optional.of(ADA));
        assertThat(hands.words()).doesNotContain("Decided differently");
        hands.type(hands.fields().get(1), "half typed");
        meet();
        part.newsCame();
        hands.awaitWord("Decided differently");
        assertThat(part.draft()).contains("half typed");
    }

    @Test
    void each_station_shows_what_it_has_seen_of_the_others() throws IOException {
        meet();
        quality.record(1, 1);
        meet();
        open(Optional.of(ADA));
        assertThat(hands.words()).anyMatch(word -> word.matches("it has seen [0-9]+ entries of bench"));
    }
}
