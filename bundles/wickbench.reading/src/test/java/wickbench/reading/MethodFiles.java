package wickbench.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/** Good methods of an invented plant, and changes to them that are good or bad. */
final class MethodFiles {
    static final List<String> NAMES = List.of("rinse-hook", "swab", "swab-sample", "food-solid", "food-liquid");

    private static final String SILENT = "(schema is silent)";

    private MethodFiles() {}

    /**
     * A changed method.
     *
     * @param title what was changed
     * @param complaints field and text each; none when the change is good
     * @param schemaSees whether the schema can tell
     */
    record Change(String title, Json.Obj method, List<String> complaints, boolean schemaSees) {
        boolean good() {
            return complaints.isEmpty();
        }

        @Override
        public String toString() {
            return title;
        }
    }

    static String text(String name) {
        return Golden.text("methods/" + name + ".json");
    }

    static List<Change> changes() {
        return Arrays.stream(Golden.text("methods/changes.txt").split("\n\n+"))
                .filter(block -> !block.startsWith("#"))
                .map(block -> change(block.lines().toList()))
                .toList();
    }

    private static Change change(List<String> block) {
        String head = block.get(0);
        String name = head.substring(0, head.indexOf(' '));
        Json.Obj method = JsonReader.readObject(name, text(name)).orRefuse();
        for (String set : settings(head.substring(name.length() + 1))) {
            String[] parts = set.split("=", 2);
            method = set(method, List.of(parts[0].split("\\.")), parts[1]);
        }
        List<String> said = new ArrayList<>(block.subList(1, block.size()));
        boolean silent = said.remove(SILENT);
        said.remove("good");
        return new Change(head, method, List.copyOf(said), !silent);
    }

    /** Cuts before each path, which begins with a letter after a blank and runs to an equals sign. */
    private static String[] settings(String text) {
        return text.split(" (?=[a-z_.]+=)");
    }

    private static Json.Obj set(Json.Obj object, List<String> path, String value) {
        String name = path.get(0);
        if (path.size() > 1) {
            Json.Obj child = (Json.Obj) object.get(name).orElseThrow();
            return object.with(name, set(child, path.subList(1, path.size()), value));
        }
        Map<String, Json> members = new LinkedHashMap<>(object.members());
        members.remove(name);
        if (!value.equals("-")) {
            members.put(name, JsonReader.read("change", value).orRefuse());
        }
        return new Json.Obj(members);
    }
}
