package wickbench.stations;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import wickbench.api.clash.Settlement;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.lot.LotId;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Seen;
import wickbench.api.owed.Settled;
import wickbench.api.person.PersonId;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.Judgement;
import wickbench.reading.MethodJson;
import wickbench.reading.RecordedReadingJson;
import wickbench.reading.Surroundings;

/** Acts of an invented plant by chance, about few enough things that stations meet on them. */
final class Acts {
    private static final Path METHOD = Path.of("..", "..", "demo", "methods", "hazelnut-rinse.json");
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final PersonId WRITER = new PersonId("op-01");

    private final Random chance;
    private final String written;
    private final Method method;
    private final List<UUID> readings = new ArrayList<>();
    private final List<UUID> doubts = new ArrayList<>();
    private final List<EntryRef> issued = new ArrayList<>();

    Acts(Random chance) {
        this.chance = chance;
        try {
            written = Files.readString(METHOD);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        method = MethodJson.read(METHOD.toString(), written).orRefuse();
    }

    Draft next() {
        return switch (chance.nextInt(18)) {
            case 0, 1 -> issue();
            case 2 -> withdraw();
            case 3, 4 -> record();
            case 5 -> correct();
            case 6 -> attach();
            case 7 -> profile();
            case 8 -> person();
            case 9 -> doubt();
            case 10 -> trust();
            case 11 -> decide();
            case 12 -> plant();
            case 13 -> competence();
            case 14, 15, 16 -> quality();
            default -> settle();
        };
    }

    /** Issues one of two methods in one of three versions, by one of two texts. */
    private Draft issue() {
        return issue("m-" + chance.nextInt(2), 1 + chance.nextInt(3), "Rinse water " + chance.nextInt(2));
    }

    Draft issue(String id, int version, String title) {
        Json.Obj text = (Json.Obj) JsonReader.read("method", written).orRefuse();
        Json.Obj body = Json.object()
                .with("method", text.with("id", id).with("version", version).with("title", title));
        return draft(Draft.contentId("method.issued", body), "method.issued", body);
    }

    /** Remembers an entry by which a method may stand. */
    void issued(EntryRef ref) {
        issued.add(ref);
    }

    private Draft withdraw() {
        Json.Obj body = Json.object()
                .with("method", "m-" + chance.nextInt(2))
                .with("version", 1)
                .with("reason", "old");
        return draft("method.withdrawn", body);
    }

    /** Records a reading; one in three was recorded on another station too, from the same sheet. */
    private Draft record() {
        boolean again = !readings.isEmpty() && chance.nextInt(3) == 0;
        UUID id = again ? known() : Draft.randomId(chance);
        readings.add(id);
        return draft(id, RecordedReading.KIND, RecordedReadingJson.write(judged()));
    }

    private UUID known() {
        return readings.get(chance.nextInt(readings.size()));
    }

    private Draft correct() {
        if (readings.isEmpty()) {
            return record();
        }
        return draft(
                CorrectedReading.KIND, CorrectedReadingJson.write(new CorrectedReading(known(), "mistyped", judged())));
    }

    /** Puts readings in doubt, under a kind that no view knows. */
    private Draft doubt() {
        Doubt doubt = Doubt.ofLot("lot.rejected", new LotId("A17"), Optional.of(START.plusSeconds(chance.nextInt(3))));
        Draft draft = draft("lot.seen", Doubt.into(Json.object(), List.of(doubt)));
        doubts.add(draft.id());
        return draft;
    }

    private Draft trust() {
        return draft("lot.seen", new Trust(doubts, START.plusSeconds(1)).into(Json.object()));
    }

    private Draft decide() {
        return readings.isEmpty()
                ? doubt()
                : draft(Settled.KIND, new Settled(known(), Owed.DECIDE, "agreed", doubts).body());
    }

    /** States one of two lines in one of three ways, or changes one. */
    private Draft plant() {
        Json.Obj line = Json.object().with("line", "L" + chance.nextInt(2));
        return chance.nextBoolean()
                ? draft("line.stated", line.with("name", "Line " + chance.nextInt(3)))
                : draft(
                        "changeover.made",
                        line.with("from", "a").with("to", "b").with("at", START.toString()));
    }

    /** Moves one of two people for one of two methods. */
    private Draft competence() {
        String at = "2026-03-0" + (1 + chance.nextInt(3)) + "T08:00:00.000Z";
        Json.Obj who = Json.object()
                .with("person", "p-" + chance.nextInt(2))
                .with("method", "m-" + chance.nextInt(2))
                .with("at", at)
                .with("reason", "as seen");
        return switch (chance.nextInt(3)) {
            case 0 -> draft("training.authorised", who.with("until", "2027-03-01"));
            case 1 -> draft("training.suspended", who);
            default ->
                draft("training.restored", who.with("until", "2027-03-01").with("suspensions", Json.texts(List.of())));
        };
    }

    private Draft quality() {
        return readings.isEmpty() ? record() : new QualityActs(chance, readings).next();
    }

    private Draft attach() {
        return draft(
                "attachment.added",
                Json.object()
                        .with("sha256", hash())
                        .with("size", 7)
                        .with("type", "text/plain")
                        .with("name", "log.txt")
                        .with("about", "a:0"));
    }

    private Draft profile() {
        return draft(
                "profile.issued",
                Json.object().with("profile", Json.object().with("zone", "UTC").with("n", chance.nextInt(3))));
    }

    private Draft person() {
        Json.Obj who = Json.object().with("person", "p-" + chance.nextInt(2));
        Json roles = chance.nextBoolean()
                ? Json.texts(List.of("administrator", "reviewer"))
                : Json.texts(List.of("reviewer"));
        return switch (chance.nextInt(7)) {
            case 0, 1 -> draft("person.enrolled", who.with("roles", roles).with("file", hash()));
            case 2 -> draft("person.assigned", who.with("roles", roles));
            case 3 -> draft("person.passphrase-set", who.with("file", hash()));
            case 4 -> draft("person.forgotten", who);
            case 5 ->
                draft(
                        "person.sign-in-failed",
                        (chance.nextBoolean() ? who : Json.object())
                                .with("shown", "pin")
                                .with("failures", 1 + chance.nextInt(5))
                                .with("turned_away", 0));
            default ->
                draft(
                        "person.signed-in",
                        who.with("shown", "pin").with("failures", 1).with("turned_away", 0));
        };
    }

    private Draft settle() {
        if (issued.isEmpty()) {
            return issue();
        }
        EntryRef stands = issued.get(chance.nextInt(issued.size()));
        Settlement settled = new Settlement("method:m-" + chance.nextInt(2), stands, List.of(stands, stands), "agreed");
        return draft(Settlement.KIND, settled.body());
    }

    private RecordedReading judged() {
        Map<LineRole, Seen> lines = new java.util.EnumMap<>(LineRole.class);
        method.marks().keySet().forEach(role -> lines.put(role, role == LineRole.TEST ? test() : Seen.SEEN));
        Reading reading = new Reading(
                sample(),
                method.ref().id(),
                method.route(),
                new LotId("A17"),
                WRITER,
                Optional.empty(),
                new Times(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(START),
                        Optional.of(START.plusSeconds(330))),
                new Strip(method.format(), lines),
                Optional.empty(),
                Map.of(),
                new Reading.Origin.Bench());
        return new RecordedReading(reading, method, List.of(), Judgement.judge(method, reading, Surroundings.none()));
    }

    private Seen test() {
        return chance.nextBoolean() ? Seen.SEEN : Seen.NOT_SEEN;
    }

    private Sample sample() {
        return new Sample(
                "S-" + chance.nextInt(5),
                "filler nozzle",
                Optional.of("L1"),
                Optional.empty(),
                Optional.of(Reason.AFTER_CLEANING),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ONE,
                Optional.empty());
    }

    private String hash() {
        return Hash.ofContent("file " + chance.nextInt(4)).hex();
    }

    private Draft draft(String kind, Json.Obj body) {
        return draft(Draft.randomId(chance), kind, body);
    }

    private static Draft draft(UUID id, String kind, Json.Obj body) {
        return new Draft(id, WRITER, kind, 1, body);
    }
}
