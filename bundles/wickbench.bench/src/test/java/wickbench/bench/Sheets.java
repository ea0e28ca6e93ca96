package wickbench.bench;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Reading;
import wickbench.reading.MethodJson;

/** Sheets and methods that the tests of this bundle share. */
final class Sheets {
    static final ZoneId ZONE = ZoneId.of("Europe/Madrid");
    static final String HEADER =
            "sample,place,method,route,lot,operator,out_of_fridge,extracted,shaken_s,started,read,seen\n";
    static final String GOOD_ROW =
            "S1,Line 2 filler,nut-swab,swab-dry,L77,ana,2026-03-02T07:00:00+01:00,2026-03-02T07:30:00+01:00,60,"
                    + "2026-03-02T07:32:00+01:00,2026-03-02T07:37:30+01:00,control hook\n";

    private Sheets() {}

    static Method method(String id) {
        try (InputStream in = Sheets.class.getResourceAsStream(id + ".json")) {
            return MethodJson.read(id + ".json", new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .orRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static MethodSource methods() {
        Map<MethodId, Method> methods = Map.of(
                new MethodId("nut-swab"), method("nut-swab"), new MethodId("gluten-rinse"), method("gluten-rinse"));
        return (id, start) -> Optional.ofNullable(methods.get(id));
    }

    static Checked<List<Reading>> read(String text) {
        return read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    static Checked<List<Reading>> read(InputStream bytes) {
        return RunSheet.read("sheet.csv", bytes, methods(), () -> ZONE);
    }

    /** Returns the one complaint of a bad sheet, as the user reads it. */
    static String complaint(Checked<?> sheet) {
        return sheet.complaints().stream()
                .map(complaint -> complaint.oneLine())
                .reduce((one, other) -> one + "\n" + other)
                .orElse("nothing wrong");
    }
}
