package wickbench.demo;

import java.util.List;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/** The invented stock room, as {@code demo/stock.json} describes it. */
record StockPlan(List<Bought> kits, List<Cold> fridges, List<Device> devices) {

    /**
     * A kit as it is bought.
     *
     * @param id as the plant names it
     * @param fridge where it is put
     * @param definition the body of {@code kit.defined}
     */
    record Bought(String id, int stripsAWeek, String fridge, Json.Obj definition) {

        int stripsInPouch() {
            return whole(parts().get(0), "per_pouch");
        }

        int stripsInBox() {
            return stripsInPouch() * whole(definition, "pouches");
        }

        /** Returns the part that is the strip, first, and the others. */
        private List<Json.Obj> parts() {
            return definition.get("parts").map(parts -> ((Json.Arr) parts).items()).orElse(List.of()).stream()
                    .map(Json.Obj.class::cast)
                    .toList();
        }

        private static int whole(Json.Obj object, String name) {
            return ((Json.Num) object.get(name).orElseThrow()).value().intValueExact();
        }
    }

    /** A fridge with the range that it keeps. */
    record Cold(String id, String name, int low, int high, String logger) {}

    /** A device that is calibrated every so many days. */
    record Device(String id, String type, String name, int days) {}

    static Checked<StockPlan> read(
            String source, String text, java.util.function.Function<String, Json.Obj> definition) {
        return JsonReader.readObject(source, text).then(object -> {
            Fields fields = Fields.of(source, object);
            fields.text("about");
            StockPlan plan = new StockPlan(
                    fields.children("kits").stream()
                            .map(kit -> bought(kit, definition))
                            .toList(),
                    fields.children("fridges").stream().map(StockPlan::cold).toList(),
                    fields.children("devices").stream().map(StockPlan::device).toList());
            return fields.finish(() -> plan);
        });
    }

    private static Bought bought(Fields fields, java.util.function.Function<String, Json.Obj> definition) {
        String id = fields.text("id");
        return new Bought(id, (int) fields.whole("strips_a_week"), fields.text("fridge"), definition.apply(id));
    }

    private static Cold cold(Fields fields) {
        return new Cold(
                fields.text("id"),
                fields.text("name"),
                (int) fields.whole("low"),
                (int) fields.whole("high"),
                fields.text("logger"));
    }

    private static Device device(Fields fields) {
        return new Device(fields.text("id"), fields.text("type"), fields.text("name"), (int) fields.whole("days"));
    }

    Optional<Bought> kit(String id) {
        return kits.stream().filter(kit -> kit.id().equals(id)).findFirst();
    }
}
