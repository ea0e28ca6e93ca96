package wickbench.demo;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wickbench.api.check.Checked;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.json.JsonReader;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.words.Coded;

/** Reads the plant from its file. */
final class PlantJson {
    private PlantJson() {}

    static Checked<Plant> read(String source, String text) {
        return JsonReader.readObject(source, text).then(object -> {
            Fields fields = Fields.of(source, object);
            fields.text("about");
            Plant plant = plant(fields);
            return fields.finish(() -> plant);
        });
    }

    private static Plant plant(Fields fields) {
        return new Plant(
                fields.text("name"),
                ZoneId.of(fields.text("zone")),
                new StationId(fields.text("station")),
                fields.texts("shifts").stream().map(LocalTime::parse).toList(),
                fields.children("closed").stream().map(PlantJson::closed).toList(),
                fields.children("products").stream().map(PlantJson::product).toList(),
                fields.children("kits").stream().map(PlantJson::kit).toList(),
                fields.children("lines").stream().map(PlantJson::line).toList(),
                fields.children("people").stream().map(PlantJson::worker).toList());
    }

    private static Plant.Closed closed(Fields fields) {
        return new Plant.Closed(MonthDay.parse("--" + fields.text("from")), MonthDay.parse("--" + fields.text("to")));
    }

    private static Plant.Product product(Fields fields) {
        return new Plant.Product(fields.text("id"), fields.text("name"), fields.texts("allergens"));
    }

    private static Plant.Kit kit(Fields fields) {
        return new Plant.Kit(
                fields.text("id"),
                fields.text("name"),
                fields.text("allergen"),
                fields.text("lots"),
                (int) fields.whole("lot_weeks"),
                fields.decimal("slope").doubleValue(),
                fields.optionalDecimal("hook_lost").map(BigDecimal::doubleValue),
                fields.optionalDecimal("test_lost").map(BigDecimal::doubleValue),
                fields.decimal("invalid_rate").doubleValue(),
                fields.decimal("damaged_rate").doubleValue());
    }

    private static Plant.Line line(Fields fields) {
        return new Plant.Line(
                fields.text("id"),
                fields.text("name"),
                fields.text("procedure"),
                fields.texts("week"),
                methods(fields, "first_off"),
                fields.children("points").stream().map(PlantJson::point).toList());
    }

    private static Plant.Point point(Fields fields) {
        return new Plant.Point(
                fields.text("name"), fields.decimal("residue").doubleValue(), methods(fields, "methods"));
    }

    private static List<MethodId> methods(Fields fields, String name) {
        return fields.texts(name).stream().map(MethodId::new).toList();
    }

    private static Plant.Worker worker(Fields fields) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        fields.texts("roles").forEach(code -> roles.add(Coded.of(Role.class, code)));
        return new Plant.Worker(new PersonId(fields.text("id")), fields.text("name"), roles);
    }
}
