package wickbench.stock.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.stock.Cause;
import wickbench.stock.LogShape;
import wickbench.stock.LotState;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;

/** The fridges in a real window: take a logger's file in, see what it says of the lots, and decide on them. */
class FridgesRoomTest {
    @TempDir
    private Path folder;

    private StockHouse house;
    private TestDesk desk;
    private Seen seen;
    private FridgesRoom room;
    private StockPart page;

    @BeforeEach
    void found() {
        house = new StockHouse(folder.resolve("home")).furnished();
        house.receive("HZ-1", "2027-03-31", Instant.parse("2026-07-01T08:00:00Z"));
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void the_demonstrations_file_shows_its_excursion_holds_the_lot_and_a_signature_decides() {
        open(StockHouse.KEEPER);
        room.read(StockHouse.DEMO.resolve("logger-f1.csv").toAbsolutePath().toString());
        seen.press("Read it in");
        desk.await(() -> seen.says("In quarantine from then on"));

        assertThat(seen.words()).anyMatch(word -> word.contains("readings from 2026-07-09"));
        assertThat(house.lot("HZ-1").state()).isEqualTo(LotState.QUARANTINED_UNCHECKED);
        seen.press("Go to lot HZ-1");
        desk.await(() -> seen.words().stream().anyMatch(word -> word.startsWith("In quarantine since")));

        desk.signIn(StockHouse.LEAD);
        page.show("HZ-1");
        desk.settle();
        desk.await(() -> seen.words().stream().anyMatch(word -> word.startsWith("In quarantine since")));
        seen.press("Decide\u2026");
        seen.field("Reason").setText("short, and the strips read right");
        seen.press("Release\u2026");
        Shell sheet = Arrays.stream(desk.shell().getShells()).findFirst().orElseThrow();
        new Seen(sheet).field("Passphrase").setText(StockHouse.LEADS);
        new Seen(sheet).press("Sign and release");
        desk.await(() -> desk.said().contains("Lot HZ-1 is released."));

        assertThat(house.lot("HZ-1").state()).isEqualTo(LotState.AWAITING_CHECK);
    }

    @Test
    void dates_that_could_be_two_things_are_asked_once_and_remembered() throws IOException {
        open(StockHouse.KEEPER);
        room.read(log("05/07/2026 08:00;6.0", "05/07/2026 08:10;6.1", "05/07/2026 08:20;6.1")
                .toString());
        seen.press("Read it in");
        desk.await(() -> seen.says("This file can be read in more than one way."));
        seen.press("Read it in");
        assertThat(seen.says("Choose one.")).isTrue();

        seen.choose("Dates are written", "day, month, year");
        seen.press("Read it in");
        desk.await(() -> seen.says("3 readings from 2026-07-05 08:00"));

        room.read(log("06/07/2026 08:00;6.0", "06/07/2026 08:10;6.1", "06/07/2026 08:20;6.1")
                .toString());
        seen.press("Read it in");
        desk.await(() -> seen.says("3 readings from 2026-07-06 08:00"));
    }

    @Test
    void a_hostile_file_is_refused_in_one_line_and_nothing_is_kept() throws IOException {
        open(StockHouse.KEEPER);
        Path file = log("2026-07-05 08:00;6.0", "2026-07-05 08:10;=cmd|' /C calc'!A0", "2026-07-05 08:20;6.1");
        room.read(file.toString());
        seen.press("Read it in");
        desk.await(() -> seen.says("expected a temperature, found"));

        assertThat(seen.words()).anyMatch(word -> word.startsWith("logger.csv:3: "));
        assertThat(house.doors().fridges().all().get(0).until()).isEmpty();
        assertThat(seen.button("Read it in").isEnabled()).isTrue();
    }

    @Test
    void a_typed_minimum_and_maximum_holds_the_lot_too() {
        open(StockHouse.KEEPER);
        seen.press("Type minimum and maximum\u2026");
        seen.field("From").setText("2026-07-18 08:00");
        seen.field("Until").setText("2026-07-20 08:00");
        seen.field("Lowest, \u00b0C").setText("-1,5");
        seen.field("Highest, \u00b0C").setText("7");
        seen.press("Keep it");
        desk.await(() -> seen.says("In quarantine from then on"));

        assertThat(house.lot("HZ-1").quarantines())
                .allMatch(held -> held.reason().contains("-1.5"))
                .extracting(held -> held.cause())
                .containsExactly(Cause.COLD, Cause.FROZEN);
        page.show("HZ-1");
        desk.await(() -> seen.says("frozen"));
    }

    @Test
    void a_time_without_an_excursion_says_so_in_words() {
        open(StockHouse.KEEPER);
        desk.await(() -> seen.says("Nothing lay outside the range in this time."));
    }

    @Test
    void a_fridge_opens_as_far_back_as_its_last_excursion_lies() throws IOException {
        open(StockHouse.KEEPER);
        Path file = log("2026-07-05 08:00;6.0", "2026-07-05 08:10;12", "2026-07-05 08:20;6.1");
        house.doors().fridges().read(file, "F1", LogShape.UNSAID, Progress.NONE, house.keeper());
        FridgeDesk fridges = new FridgeDesk(house.doors());
        assertThat(fridges.known(Optional.empty(), Optional.empty(), Optional.empty())
                        .days())
                .isEqualTo(30);
        house.after(Duration.ofDays(60));
        assertThat(fridges.known(Optional.empty(), Optional.empty(), Optional.empty())
                        .days())
                .isEqualTo(90);
        assertThat(fridges.known(Optional.empty(), Optional.of(7), Optional.empty())
                        .days())
                .isEqualTo(7);
    }

    @Test
    void who_lacks_the_role_reads_no_file_in() {
        house.leaves(StockHouse.KEEPER);
        open(StockHouse.OPERATOR);
        room.read("logger.csv");

        assertThat(seen.button("Read it in").isEnabled()).isFalse();
        assertThat(seen.says("stock keeper")).isTrue();
    }

    private Path log(String... rows) throws IOException {
        return Files.writeString(
                folder.resolve("logger.csv"), "Time;Temperature (\u00b0C)\n" + String.join("\n", rows) + "\n");
    }

    private void open(PersonId who) {
        desk = new TestDesk(false, 100, 1180, 720, Optional.of(who));
        page = desk.open(parent -> new StockPart(parent, desk, house.doors()));
        page.show("fridges");
        room = (FridgesRoom) page.front();
        seen = new Seen(desk.shell());
        desk.await(() -> seen.says("Lots inside"));
    }
}
