package wickbench.stock.room;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wickbench.api.authority.Signature;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.Route;
import wickbench.api.words.Coded;
import wickbench.stock.Kit;
import wickbench.stock.Kit.CheckRule;
import wickbench.stock.Kit.Storage;
import wickbench.stock.Kit.Supply;
import wickbench.stock.Part;
import wickbench.stock.gs1.CheckDigit;

/** Kits as JSON documents; the schema is {@code docs/formats/kit-1.schema.json}. */
public final class KitJson {
    private static final int MOST = 100_000;

    private final Fields fields;

    private KitJson(Fields fields) {
        this.fields = fields;
    }

    /** Reads a kit. */
    public static Checked<Kit> read(String source, Json.Obj object) {
        return new KitJson(Fields.of(source, object)).read();
    }

    /** Writes a kit. */
    public static Json.Obj write(Kit kit) {
        Json.Obj object = Json.object()
                .with("kit", kit.name())
                .with("gtins", Json.texts(kit.gtins()))
                .with("pouches", kit.pouches())
                .with(
                        "parts",
                        Json.array(kit.parts().stream().map(KitJson::part).toList()))
                .with("may_mix", kit.mayMix())
                .with("storage", storage(kit.storage()))
                .with("check", check(kit.check()))
                .with("supply", supply(kit.supply()))
                .withText("insert_revision", kit.insertRevision());
        return object.withOptional("box_days", kit.boxDays().map(days -> new Json.Num(BigDecimal.valueOf(days))))
                .withOptional("pouch_hours", kit.pouchHours().map(hours -> new Json.Num(BigDecimal.valueOf(hours))));
    }

    private static Json.Obj part(Part part) {
        Json.Obj object = Json.object()
                .with("name", part.name())
                .with("strip", part.strip())
                .with("per_pouch", part.perPouch())
                .with("per_box", part.perBox())
                .with("per_test", part.perTest())
                .with("unit", part.unit());
        return part.routes().isEmpty()
                ? object
                : object.with(
                        "routes",
                        Json.texts(new TreeSet<>(part.routes())
                                .stream().map(Route::code).toList()));
    }

    private static Json.Obj storage(Storage storage) {
        return Json.object()
                .with("low", storage.low())
                .with("high", storage.high())
                .with("warm_minutes", storage.warmMinutes())
                .with("cold_minutes", storage.coldMinutes())
                .with("gap_minutes", storage.gapMinutes());
    }

    private static Json.Obj check(CheckRule rule) {
        return Json.object()
                .with("blanks", rule.blanks())
                .with("low_positives", rule.lowPositives())
                .with("most_wrong", rule.mostWrong())
                .with("most_invalid", rule.mostInvalid())
                .with("waivable", rule.waivable());
    }

    private static Json.Obj supply(Supply supply) {
        return Json.object()
                .with("lead_days", supply.leadDays())
                .with("lead_sd_days", supply.leadDeviation())
                .with("service", supply.service());
    }

    private Checked<Kit> read() {
        fields.has(Signature.MEMBER);
        fields.has(Signature.WITNESS);
        String name = fields.text("kit");
        List<String> gtins = gtins();
        int pouches = whole(fields, "pouches", 1);
        List<Part> parts = parts();
        Optional<Integer> boxDays = optional("box_days");
        Optional<Integer> pouchHours = optional("pouch_hours");
        boolean mayMix = fields.flag("may_mix");
        Storage storage = storage(fields.child("storage"));
        CheckRule check = check(fields.child("check"));
        Supply supply = supply(fields.child("supply"));
        Optional<String> insert = fields.optionalText("insert_revision");
        return fields.finish(() ->
                new Kit(name, gtins, pouches, parts, boxDays, pouchHours, mayMix, storage, check, supply, insert));
    }

    private List<String> gtins() {
        List<String> gtins = fields.texts("gtins");
        gtins.stream()
                .filter(gtin -> !gtin.matches("[0-9]{14}") || !CheckDigit.right(gtin))
                .forEach(gtin ->
                        fields.complain("gtins", "expected 14 digits with their check digit, found '" + gtin + "'"));
        return gtins;
    }

    private List<Part> parts() {
        List<Part> parts = fields.children("parts").stream().map(KitJson::part).toList();
        Set<String> names = new HashSet<>();
        parts.stream()
                .filter(part -> !names.add(part.name()))
                .forEach(part -> fields.complain("parts", "'" + part.name() + "' stands there twice"));
        if (parts.stream().filter(Part::strip).count() != 1) {
            fields.complain("parts", "expected exactly one part that is the strip");
        }
        return parts;
    }

    private static Part part(Fields fields) {
        boolean strip = fields.flag("strip");
        Part part = new Part(
                fields.text("name"),
                strip,
                amount(fields, "per_pouch"),
                amount(fields, "per_box"),
                amount(fields, "per_test"),
                fields.text("unit"),
                routes(fields));
        if (strip && !wholeStrips(part)) {
            fields.complain(
                    "per_test", "expected one strip a test, whole strips in a pouch, and none beside the pouches");
        }
        return part;
    }

    private static boolean wholeStrips(Part part) {
        return part.perTest().compareTo(BigDecimal.ONE) == 0
                && part.perBox().signum() == 0
                && part.perPouch().signum() > 0
                && part.perPouch().stripTrailingZeros().scale() <= 0
                && part.routes().isEmpty();
    }

    private static Set<Route> routes(Fields fields) {
        Set<Route> routes = new TreeSet<>();
        for (String code : fields.texts("routes")) {
            try {
                routes.add(Coded.of(Route.class, code));
            } catch (IllegalArgumentException e) {
                fields.complain("routes", e.getMessage());
            }
        }
        return routes;
    }

    private static Storage storage(Fields fields) {
        BigDecimal low = fields.decimal("low");
        BigDecimal high = fields.decimal("high");
        if (low.compareTo(high) >= 0) {
            fields.complain("high", "expected more than low, " + low.toPlainString());
        }
        return new Storage(
                low,
                high,
                whole(fields, "warm_minutes", 0),
                whole(fields, "cold_minutes", 0),
                whole(fields, "gap_minutes", 1));
    }

    private static CheckRule check(Fields fields) {
        return new CheckRule(
                whole(fields, "blanks", 0),
                whole(fields, "low_positives", 0),
                whole(fields, "most_wrong", 0),
                whole(fields, "most_invalid", 0),
                fields.flag("waivable"));
    }

    private static Supply supply(Fields fields) {
        BigDecimal service = fields.decimal("service");
        if (service.signum() <= 0 || service.compareTo(BigDecimal.ONE) >= 0) {
            fields.complain("service", "expected a chance between 0 and 1, found " + service.toPlainString());
        }
        return new Supply(whole(fields, "lead_days", 0), whole(fields, "lead_sd_days", 0), service);
    }

    private Optional<Integer> optional(String name) {
        return fields.has(name) ? Optional.of(whole(fields, name, 1)) : Optional.empty();
    }

    private static BigDecimal amount(Fields fields, String name) {
        BigDecimal amount = fields.decimal(name);
        if (amount.signum() < 0) {
            fields.complain(name, "expected 0 or more, found " + amount.toPlainString());
        }
        return amount;
    }

    private static int whole(Fields fields, String name, int least) {
        long value = fields.whole(name);
        if (value < least || value > MOST) {
            fields.complain(name, "expected a whole number from " + least + " to " + MOST + ", found " + value);
            return least;
        }
        return (int) value;
    }
}
