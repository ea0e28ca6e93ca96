package wickbench.training.round;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.Format;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.training.Design;
import wickbench.training.PassRule;
import wickbench.training.RoundKey;
import wickbench.training.RoundKey.Sealed;
import wickbench.training.RoundPlan;
import wickbench.training.StripClass;
import wickbench.training.book.Bodies;

/** The bodies of {@code round.opened} and {@code round.closed}. */
public final class RoundJson {
    private RoundJson() {}

    static Json.Obj opened(
            RoundPlan plan, Instant at, List<String> codes, Map<String, Hash> photographs, Hash commitment) {
        Json.Obj body = Json.object()
                .with("round", plan.id())
                .with("at", Bodies.time(at))
                .with("method", plan.method().value())
                .with("format", plan.format().code())
                .with("develop_s", plan.develop().toSeconds())
                .with("window_s", plan.window().toSeconds())
                .with("strips", strips(plan.design()))
                .with("rule", rule(plan.design().rule()))
                .with("readers", people(plan.readers()))
                .with("experts", people(plan.experts()))
                .with("key_known", !plan.panel().isEmpty())
                .with("key_by", plan.keyMaker())
                .with("codes", Json.texts(codes))
                .with("commitment", commitment.hex());
        return photographs.isEmpty() ? body : body.with("photographs", pictures(photographs));
    }

    private static Json.Obj pictures(Map<String, Hash> photographs) {
        Json.Obj pictures = Json.object();
        for (Map.Entry<String, Hash> each : new TreeMap<>(photographs).entrySet()) {
            pictures = pictures.with(each.getKey(), each.getValue().hex());
        }
        return pictures;
    }

    /** Returns how many strips there are of each kind. */
    public static Json.Obj strips(Design design) {
        Json.Obj strips = Json.object();
        for (StripClass kind : StripClass.values()) {
            strips = strips.with(kind.code(), design.of(kind));
        }
        return strips;
    }

    public static Json.Obj rule(PassRule rule) {
        return Json.object()
                .with("near_missed", rule.nearMissed())
                .with("clear_missed", rule.clearMissed())
                .with("false_alarms", rule.falseAlarms())
                .with("invalid_missed", rule.invalidMissed())
                .with("outside_window", rule.outsideWindow());
    }

    static Json.Arr people(List<PersonId> people) {
        return Json.texts(people.stream().map(PersonId::value).toList());
    }

    /** Reads the plan; strips of a panel stand in the key only, so the plan read back has none. */
    static RoundPlan plan(Fields fields) {
        Fields strips = fields.child("strips");
        Map<StripClass, Integer> counts = new EnumMap<>(StripClass.class);
        for (StripClass kind : StripClass.values()) {
            counts.put(kind, (int) strips.whole(kind.code()));
        }
        Fields rule = fields.child("rule");
        return new RoundPlan(
                fields.text("round"),
                new MethodId(fields.text("method")),
                Coded.of(Format.class, fields.text("format")),
                Duration.ofSeconds(fields.whole("develop_s")),
                Duration.ofSeconds(fields.whole("window_s")),
                new Design(
                        counts,
                        new PassRule(
                                (int) rule.whole("near_missed"),
                                (int) rule.whole("clear_missed"),
                                (int) rule.whole("false_alarms"),
                                (int) rule.whole("invalid_missed"),
                                (int) rule.whole("outside_window"))),
                people(fields, "readers"),
                people(fields, "experts"),
                List.of(),
                fields.text("key_by"));
    }

    static List<PersonId> people(Fields fields, String name) {
        return fields.texts(name).stream().map(PersonId::new).toList();
    }

    static Map<String, Hash> photographs(Fields fields) {
        Map<String, Hash> pictures = new LinkedHashMap<>();
        fields.optionalChild("photographs")
                .ifPresent(child -> child.names().forEach(code -> pictures.put(code, new Hash(child.text(code)))));
        return pictures;
    }

    static Json.Obj closed(String round, Instant at, RoundKey key, List<PersonId> without, Optional<String> reason) {
        return Json.object()
                .with("round", round)
                .with("at", Bodies.time(at))
                .with("key", key.json())
                .with("without", people(without))
                .withText("reason", reason);
    }

    /** Reads a key as it stands in its file and in the entry that opens it. */
    static RoundKey key(Fields fields) {
        List<Sealed> strips = fields.children("strips").stream()
                .map(strip -> new Sealed(
                        strip.text("code"),
                        strip.text("item"),
                        Coded.of(StripClass.class, strip.text("class")),
                        strip.has("line") ? Optional.of(strip.flag("line")) : Optional.empty(),
                        strip.optionalDecimal("contrast")))
                .toList();
        return new RoundKey(fields.text("round"), fields.text("nonce"), strips);
    }
}
