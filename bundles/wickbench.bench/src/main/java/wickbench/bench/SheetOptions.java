package wickbench.bench;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Reading;

/** The options that name a sheet. */
final class SheetOptions {

    @Option(names = "--sheet", required = true, paramLabel = "FILE.csv")
    private Path sheet;

    List<Reading> read(SheetDesk desk, MethodSource methods) {
        try (InputStream bytes = new BufferedInputStream(Files.newInputStream(sheet))) {
            return desk.read(name(), bytes, methods).orRefuse();
        } catch (IOException e) {
            throw new BadInput(Complaint.of(sheet.toString(), BenchWords.get("sheet.unreadable", FileTrouble.of(e))));
        }
    }

    private String name() {
        return sheet.getFileName().toString();
    }

    /** Reads method files; the newest version of each id counts. */
    static Map<MethodId, Method> methods(List<Path> files) {
        Map<MethodId, Method> methods = new LinkedHashMap<>();
        for (Path file : files) {
            Method method = MethodFile.read(file).orRefuse();
            methods.merge(
                    method.ref().id(),
                    method,
                    (one, other) -> one.ref().version() > other.ref().version() ? one : other);
        }
        return methods;
    }
}
