package wickbench.stock.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.journal.JournalFolder;
import wickbench.stock.LotState;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;

/** What two stations decided on one lot without knowing of one another, settled beside the lot. */
class LotClashTest {
    private static final LotId LOT = new LotId("HZ-1");

    @TempDir
    private Path folder;

    private StockHouse house;
    private JournalFolder other;
    private TestDesk desk;
    private Seen seen;

    @BeforeEach
    void decide() throws IOException {
        house = new StockHouse(folder.resolve("home"), false).furnished();
        Instant now = house.doors().clock().instant();
        house.receive(
                "HZ-1", LocalDate.ofInstant(now, ZoneOffset.UTC).plusYears(1).toString(), now);
        other = JournalFolder.open(new HomeFolder(folder.resolve("other")), entries -> {});
        other.found(new Founding(new StationId("quality"), house.doors().room().zone(), OptionalLong.empty()));
        house.doors().keeping().waive(LOT, "as last time", house.keeper());
        String at = new DateTimeFormatterBuilder()
                .appendInstant(3)
                .toFormatter()
                .format(house.doors().clock().instant());
        other.append(List.of(new Draft(
                new UUID(7, 7),
                new PersonId("lead"),
                "lot.rejected",
                1,
                Json.object()
                        .with("lot", LOT.value())
                        .with("at", at)
                        .with("since", at)
                        .with("reason", "the maker recalls it"))));
        meet();
    }

    private void meet() throws IOException {
        Path share = Files.createDirectories(folder.resolve("share"));
        house.journal().others().share(Optional.of(share));
        other.others().share(Optional.of(share));
        for (int round = 0; round < 3; round++) {
            house.journal().others().exchange();
            other.others().exchange();
        }
    }

    @AfterEach
    void close() {
        desk.close();
        other.close();
        house.close();
    }

    @Test
    void the_lot_says_so_stands_in_the_more_cautious_state_and_is_settled_by_a_signature() {
        assertThat(house.lot("HZ-1").state()).isEqualTo(LotState.REJECTED);
        desk = new TestDesk(false, 100, 1180, 900, Optional.of(StockHouse.LEAD));
        StockPart page = desk.open(parent -> new StockPart(parent, desk, house.doors()));
        seen = new Seen(desk.shell());
        page.show("HZ-1");
        desk.await(() -> seen.says("Two stations decided on this lot without knowing of one another."));

        seen.press("Settle\u2026");
        seen.field("Reason").setText("the recall is of another lot");
        seen.press("Settle\u2026");
        assertThat(seen.says("Choose one.")).isTrue();
        String waived = Arrays.stream(seen.choice("It stands by").getItems())
                .filter(item -> item.startsWith("check waived, by Marit Kolbenau (keeper), "))
                .findFirst()
                .orElseThrow(() ->
                        new AssertionError(List.of(seen.choice("It stands by").getItems())));
        seen.choose("It stands by", waived);
        seen.press("Settle\u2026");
        Shell sheet = Arrays.stream(desk.shell().getShells()).findFirst().orElseThrow();
        new Seen(sheet).field("Passphrase").setText(StockHouse.LEADS);
        new Seen(sheet).press("Sign and settle");
        desk.await(() -> desk.said().contains("Lot HZ-1 stands by the decision that was chosen."));

        assertThat(house.lot("HZ-1").state()).isEqualTo(LotState.FIT);
        assertThat(house.doors().room().clashing(LOT)).isEmpty();
        desk.await(() -> seen.says("clash settled"));
        desk.await(() -> !seen.says("Two stations decided on this lot"));
    }
}
