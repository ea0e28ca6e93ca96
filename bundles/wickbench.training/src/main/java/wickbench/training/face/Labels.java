package wickbench.training.face;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wickbench.training.RoundKey;

/** The list by which strips are prepared and labelled; it holds the key, so it belongs to who prepares them alone. */
final class Labels {
    private Labels() {}

    static void write(RoundKey key, Path file) {
        List<List<String>> rows = new ArrayList<>(List.of(List.of("code", "item", "class")));
        key.strips()
                .forEach(strip -> rows.add(
                        List.of(strip.code(), strip.item(), strip.kind().code())));
        CallSheet.write(file, rows);
    }
}
