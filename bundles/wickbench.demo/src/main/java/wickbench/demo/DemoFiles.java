package wickbench.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.reading.MethodJson;

/** The files of the demonstration, as they travel in this bundle. */
final class DemoFiles {
    private static final String FOLDER = "/demo/";
    private static final MethodId REVISED = new MethodId("hazelnut-swab-dry");

    private DemoFiles() {}

    static Plant plant() {
        return PlantJson.read("plant.json", text("plant.json")).orRefuse();
    }

    static StockPlan stock() {
        return StockPlan.read("stock.json", text("stock.json"), DemoFiles::kit).orRefuse();
    }

    static PlantSite site() {
        return new PlantSite(
                JsonReader.readObject("site.json", text("site.json")).orRefuse(),
                PlantSite.objects(
                        JsonReader.read("spots.json", text("spots.json")).orRefuse()));
    }

    /** Returns the floor picture, drawn for the demonstration. */
    static byte[] floor() {
        return bytes("floor.png");
    }

    private static Json.Obj kit(String id) {
        String name = "kits/" + id + ".json";
        return JsonReader.readObject(name, text(name)).orRefuse();
    }

    /** Returns the first editions of the methods that a plant uses, kit after kit. */
    static Map<MethodId, Method> methods(Plant plant) {
        Map<MethodId, Method> methods = new LinkedHashMap<>();
        plant.methods().stream()
                .map(id -> method("methods/" + id + ".json"))
                .sorted(Comparator.comparing(method -> plant.kits().indexOf(plant.kitNamed(method.kit()))))
                .forEach(method -> methods.put(method.ref().id(), method));
        return methods;
    }

    /** Returns the method that is issued anew with the changed cleaning procedure. */
    static Method secondEdition() {
        return method("methods/edition-2/" + REVISED + ".json");
    }

    private static Method method(String name) {
        return MethodJson.read(name, text(name)).orRefuse();
    }

    private static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Objects.requireNonNull(DemoFiles.class.getResourceAsStream(FOLDER + name), name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name + " of the demonstration", e);
        }
    }
}
