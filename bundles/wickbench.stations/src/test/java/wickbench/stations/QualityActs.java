package wickbench.stations;

import java.util.List;
import java.util.Random;
import java.util.UUID;
import wickbench.api.clash.Settlement;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/** What quality does because of readings, by chance, in the published forms of its entries. */
record QualityActs(Random chance, List<UUID> readings) {
    private static final PersonId RELEASER = new PersonId("p-01");

    Draft next() {
        return switch (chance.nextInt(7)) {
            case 0, 1 -> draft("action.decided", decided());
            case 2 -> draft("release.planned", planned());
            case 3 -> draft("trend.based", based());
            case 4 -> draft("outside.reported", reported());
            case 5 -> draft("release.recorded", released());
            default -> draft(Settlement.KIND, settled().body());
        };
    }

    private String reading() {
        return readings.get(chance.nextInt(readings.size())).toString();
    }

    private Json.Obj decided() {
        return Json.object()
                .with("result", reading())
                .with("move", chance.nextBoolean() ? "hold" : "re-test")
                .with("products", Json.texts(List.of("B-" + chance.nextInt(2))))
                .with("reason", "as the plan says");
    }

    private Json.Obj planned() {
        return Json.object()
                .with("line", line())
                .with(
                        "points",
                        Json.array(List.of(
                                Json.object().with("place", "filler nozzle").with("method", "m-" + chance.nextInt(2)))))
                .with("reason", "risk assessment");
    }

    private Json.Obj based() {
        return Json.object()
                .with("line", line())
                .with("from", "2026-01-0" + (1 + chance.nextInt(3)))
                .with("to", "2026-02-01")
                .with("reason", "a quiet month");
    }

    private Json.Obj reported() {
        return Json.object()
                .with("laboratory", "Harbour Laboratory")
                .with("reference", "HL-" + chance.nextInt(3))
                .with("sample", "F-1")
                .with("target", "hazelnut")
                .with("detected", chance.nextBoolean())
                .with("batch", "B-" + chance.nextInt(2))
                .with("results", Json.texts(List.of(reading())))
                .with("reported", "2026-03-05T10:00:00.000Z");
    }

    private Json.Obj released() {
        return Json.object()
                .with("sort", chance.nextBoolean() ? "line" : "batch")
                .with("name", line())
                .with("rests", Json.texts(List.of(reading())))
                .with("reason", "all points are Negative");
    }

    private Settlement settled() {
        EntryRef stands = EntryRef.parse("a:" + chance.nextInt(20));
        EntryRef lost = EntryRef.parse("b:" + chance.nextInt(20));
        String subject = switch (chance.nextInt(3)) {
            case 0 -> "case:" + reading();
            case 1 -> "plan:" + line();
            default -> "trend:{\"line\":\"" + line() + "\"}";
        };
        return new Settlement(subject, stands, List.of(stands, lost), "agreed");
    }

    private String line() {
        return "L" + chance.nextInt(2);
    }

    private Draft draft(String kind, Json.Obj body) {
        return new Draft(Draft.randomId(chance), RELEASER, kind, 1, body);
    }
}
