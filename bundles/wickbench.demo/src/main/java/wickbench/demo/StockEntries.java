package wickbench.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;

/**
 * Writes what the stock room records: its kinds of entry, by their published forms in {@code docs/formats}.
 *
 * <p>The stock room need not be installed where a demonstration is made; installed later, it reads all of it.
 */
final class StockEntries {
    private final Doors doors;
    private final List<Draft> sheet = new ArrayList<>();

    StockEntries(Doors doors) {
        this.doors = doors;
    }

    Entry write(PersonId by, String kind, Json.Obj body) {
        return doors.journal().append(List.of(draft(by, kind, body))).get(0);
    }

    /** Keeps an entry for {@link #flush}, as what stands on the day's sheet. */
    void later(PersonId by, String kind, Json.Obj body) {
        sheet.add(draft(by, kind, body));
    }

    /** Writes all that was kept, at once. */
    void flush() {
        if (!sheet.isEmpty()) {
            doors.journal().append(List.copyOf(sheet));
            sheet.clear();
        }
    }

    private Draft draft(PersonId by, String kind, Json.Obj body) {
        return new Draft(Draft.randomId(doors.home().chance()), by, kind, 1, body);
    }

    Instant now() {
        return doors.home().clock().instant();
    }

    /** Writes an entry about a lot, done now. */
    Entry lot(PersonId by, String what, LotId lot, Json.Obj facts) {
        return lot(by, what, lot, now(), facts);
    }

    Entry lot(PersonId by, String what, LotId lot, Instant at, Json.Obj facts) {
        Json.Obj body = Json.object().with("lot", lot.value()).with("at", time(at));
        for (var each : facts.members().entrySet()) {
            body = body.with(each.getKey(), each.getValue());
        }
        return write(by, "lot." + what, body);
    }

    /** Keeps the opening of a pouch, which people write on the day's sheet. */
    void opened(PersonId by, LotId lot, Instant at) {
        later(by, "lot.opened", Json.object().with("lot", lot.value()).with("at", time(at)));
    }

    void received(PersonId by, LotId lot, StockPlan.Bought kit, LocalDate expiry, int boxes) {
        lot(
                by,
                "received",
                lot,
                Json.object()
                        .with("kit", text(kit.definition(), "kit"))
                        .with("expiry", expiry.toString())
                        .with("boxes", boxes)
                        .with("insert", text(kit.definition(), "insert_revision"))
                        .with("place", kit.fridge()));
    }

    void checked(PersonId by, LotId lot, List<UUID> readings) {
        lot(
                by,
                "checked",
                lot,
                Json.object()
                        .with("passed", true)
                        .with("blanks", readings.size() / 2)
                        .with("low_positives", readings.size() / 2)
                        .with("wrong", 0)
                        .with("invalid", 0)
                        .with(
                                "readings",
                                Json.texts(readings.stream().map(UUID::toString).toList())));
    }

    private static String text(Json.Obj object, String name) {
        return ((Json.Text) object.get(name).orElseThrow()).value();
    }

    static String time(Instant at) {
        return new java.time.format.DateTimeFormatterBuilder()
                .appendInstant(3)
                .toFormatter()
                .format(at);
    }
}
