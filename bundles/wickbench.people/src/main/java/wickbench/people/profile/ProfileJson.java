package wickbench.people.profile;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.method.Unit;
import wickbench.api.profile.ControlRule;
import wickbench.api.profile.Profile;
import wickbench.api.reading.Outcome;
import wickbench.api.words.Coded;

/** Site profiles as JSON documents; the schema is {@code docs/formats/profile-1.schema.json}. */
final class ProfileJson {
    private static final Pattern NEIGHBOUR = Pattern.compile("[a-z][a-z-]{0,31}");
    private static final Pattern KIND = Pattern.compile("[a-z]+(-[a-z]+)*\\.[a-z]+(-[a-z]+)*");
    private static final Pattern KIT = Pattern.compile(".*\\S.*");
    private static final int MOST_DAYS = 365;
    private static final int MOST_YEARS = 100;
    private static final int MOST_PASSPHRASE_DAYS = 3650;

    private final Fields fields;

    private ProfileJson(Fields fields) {
        this.fields = fields;
    }

    static Checked<Profile> read(String source, String text) {
        return JsonReader.readObject(source, text).then(object -> read(source, object));
    }

    static Checked<Profile> read(String source, Json.Obj object) {
        return new ProfileJson(Fields.of(source, object)).read();
    }

    static Json.Obj write(Profile profile) {
        return Json.object()
                .with("plant", profile.plant())
                .with("zone", profile.zone().getId())
                .with(
                        "units",
                        Json.texts(profile.units().stream().map(Unit::symbol).toList()))
                .with("required_checks", sorted(profile.requiredChecks()))
                .with("required_signatures", sorted(profile.requiredSignatures()))
                .with("double_read", profile.doubleRead())
                .with("review_days", profile.reviewDays())
                .with("outcome_order", Json.texts(codes(profile.outcomeOrder().stream())))
                .with("retention_years", profile.retentionYears())
                .withOptional(
                        "passphrase_days", profile.passphraseDays().map(days -> new Json.Num(BigDecimal.valueOf(days))))
                .withOptional("run_controls", profile.runControls().json())
                .withOptional(
                        "waived_lot_checks",
                        Optional.of(profile.waivedLotChecks())
                                .filter(kits -> !kits.isEmpty())
                                .map(ProfileJson::sorted));
    }

    private Checked<Profile> read() {
        String plant = fields.text("plant");
        Optional<ZoneId> zone = zone();
        List<Unit> units = units();
        Set<String> checks = named("required_checks", NEIGHBOUR, "a neighbour such as stock or training");
        Set<String> signatures = named("required_signatures", KIND, "a kind of entry such as method.issued");
        BigDecimal share = share();
        int days = whole("review_days", 1, MOST_DAYS);
        List<Outcome> order = order();
        int years = whole("retention_years", Profile.LEAST_RETENTION_YEARS, MOST_YEARS);
        Optional<Integer> aging = fields.has("passphrase_days")
                ? Optional.of(whole("passphrase_days", 1, MOST_PASSPHRASE_DAYS))
                : Optional.empty();
        ControlRule controls =
                fields.optionalChild("run_controls").map(ControlRule::in).orElse(ControlRule.NONE);
        Set<String> waived = named("waived_lot_checks", KIT, "a kit by the name that the site gives it");
        return fields.finish(() -> new Profile(
                plant,
                zone.orElseThrow(),
                units,
                checks,
                signatures,
                share,
                days,
                order,
                years,
                aging,
                controls,
                waived));
    }

    private Optional<ZoneId> zone() {
        fields.text("zone");
        return fields.optional("zone", id -> {
            try {
                return ZoneId.of(id);
            } catch (DateTimeException e) {
                throw new IllegalArgumentException(
                        "expected an IANA time zone such as Europe/Vienna, found '" + id + "'", e);
            }
        });
    }

    private List<Unit> units() {
        List<Unit> units = parsed("units", Unit::ofSymbol);
        Set<Unit.Kind> kinds = EnumSet.noneOf(Unit.Kind.class);
        units.stream()
                .filter(unit -> !kinds.add(unit.kind()))
                .forEach(unit -> fields.complain("units", unit.symbol() + " is a second unit for the same; name one"));
        return units;
    }

    private List<Outcome> order() {
        List<Outcome> order = parsed("outcome_order", code -> Coded.of(Outcome.class, code));
        if (order.size() != Outcome.values().length
                || EnumSet.allOf(Outcome.class).size() != Set.copyOf(order).size()) {
            fields.complain(
                    "outcome_order",
                    "expected each of " + String.join(", ", codes(Stream.of(Outcome.values()))) + " once");
        }
        return order;
    }

    private BigDecimal share() {
        BigDecimal share = fields.decimal("double_read");
        if (share.signum() < 0 || share.compareTo(BigDecimal.ONE) > 0) {
            fields.complain("double_read", "expected a part from 0 to 1, found " + share.toPlainString());
        }
        return share;
    }

    private int whole(String name, int least, int most) {
        long value = fields.whole(name);
        if (fields.has(name) && (value < least || value > most)) {
            fields.complain(name, "expected a whole number from " + least + " to " + most + ", found " + value);
        }
        return (int) Math.max(least, Math.min(most, value));
    }

    private Set<String> named(String name, Pattern form, String expected) {
        return new TreeSet<>(parsed(name, text -> {
            if (!form.matcher(text).matches()) {
                throw new IllegalArgumentException("expected " + expected + ", found '" + text + "'");
            }
            return text;
        }));
    }

    private <T> List<T> parsed(String name, Function<String, T> parse) {
        List<T> parsed = new ArrayList<>();
        for (String text : fields.texts(name)) {
            try {
                parsed.add(parse.apply(text));
            } catch (IllegalArgumentException e) {
                fields.complain(name, e.getMessage());
            }
        }
        return parsed;
    }

    private static Json.Arr sorted(Set<String> texts) {
        return Json.texts(texts.stream().sorted().toList());
    }

    private static List<String> codes(Stream<Outcome> outcomes) {
        return outcomes.map(Outcome::code).collect(Collectors.toList());
    }
}
