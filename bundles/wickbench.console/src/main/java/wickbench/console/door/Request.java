package wickbench.console.door;

import java.nio.file.Path;
import java.util.List;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/**
 * What a second program wants of the one that holds the home.
 *
 * @param token proves that the caller could read the key
 * @param arguments the whole command line; none asks for the window to come forward
 * @param folder where the caller's relative paths start
 */
record Request(String token, List<String> arguments, Path folder) {
    /** The version of this conversation; another one is not answered. */
    private static final long VERSION = 1;

    Request {
        arguments = List.copyOf(arguments);
    }

    String line() {
        return Json.object()
                .with("v", VERSION)
                .with("token", token)
                .with("arguments", Json.texts(arguments))
                .with("folder", folder.toString())
                .canonical();
    }

    static Checked<Request> read(String line) {
        return JsonReader.readObject("request", line).then(object -> {
            Fields fields = Fields.of("request", object);
            if (fields.whole("v") != VERSION) {
                fields.complain("v", "expected " + VERSION);
            }
            String token = fields.text("token");
            List<String> arguments = fields.texts("arguments");
            String folder = fields.text("folder");
            return fields.finish(() -> new Request(token, arguments, Path.of(folder)));
        });
    }
}
