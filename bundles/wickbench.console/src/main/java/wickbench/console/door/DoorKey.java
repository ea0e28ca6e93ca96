package wickbench.console.door;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.HexFormat;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/**
 * Where the socket is, and what opens it.
 *
 * @param token 256 bits by chance, in hexadecimal
 */
record DoorKey(Path socket, String token) {
    private static final int TOKEN_BYTES = 32;

    /** Draws a new token; never from the home's chance, which repeats itself in a simulated home. */
    static DoorKey cut(Path socket) {
        byte[] token = new byte[TOKEN_BYTES];
        new SecureRandom().nextBytes(token);
        return new DoorKey(socket, HexFormat.of().formatHex(token));
    }

    String line() {
        return Json.object()
                .with("socket", socket.toString())
                .with("token", token)
                .canonical();
    }

    static Checked<DoorKey> read(String source, String line) {
        return JsonReader.readObject(source, line).then(object -> {
            Fields fields = Fields.of(source, object);
            String socket = fields.text("socket");
            String token = fields.text("token");
            return fields.finish(() -> new DoorKey(Path.of(socket), token));
        });
    }
}
