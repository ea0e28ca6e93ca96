package wickbench.stock.face;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.authority.Actor;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.stock.Kit;
import wickbench.stock.room.KitJson;
import wickbench.stock.room.StockWords;

/** Kits in files. */
final class KitFiles {
    private static final long LARGEST = 1 << 18;

    private final Doors doors;
    private final Terminal terminal;

    KitFiles(Doors doors, Terminal terminal) {
        this.doors = doors;
        this.terminal = terminal;
    }

    int define(List<Path> files, Actor by) {
        List<Kit> kits = files.stream().map(KitFiles::read).toList();
        kits.forEach(kit -> {
            doors.keeping().define(kit, by);
            terminal.note(StockWords.get("kit.defined", kit.name()));
        });
        return 0;
    }

    int list() {
        List<Kit> kits = doors.room().kits();
        if (terminal.json()) {
            terminal.json(Json.array(kits.stream().map(KitJson::write).toList()));
        } else if (kits.isEmpty()) {
            terminal.line(StockWords.get("kit.none"));
        } else {
            terminal.table(
                    List.of(
                            StockWords.get("column.kit"),
                            StockWords.get("column.in-box"),
                            StockWords.get("column.parts")),
                    kits.stream().map(KitFiles::row).toList());
        }
        return 0;
    }

    private static List<String> row(Kit kit) {
        return List.of(
                kit.name(),
                String.valueOf(kit.stripsInBox()),
                String.join(", ", kit.parts().stream().map(part -> part.name()).toList()));
    }

    static Kit read(Path file) {
        String name = file.getFileName().toString();
        try {
            if (Files.size(file) > LARGEST) {
                throw Typed.wrong(name, "file.large", LARGEST);
            }
            return JsonReader.readObject(name, Files.readString(file))
                    .then(object -> KitJson.read(name, object))
                    .orRefuse();
        } catch (IOException e) {
            throw Typed.wrong(name, "file.unreadable", e.getMessage());
        }
    }
}
