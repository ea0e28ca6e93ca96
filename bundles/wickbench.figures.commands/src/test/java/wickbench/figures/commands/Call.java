package wickbench.figures.commands;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.json.Json;
import wickbench.testing.HeardTerminal;

/**
 * {@code figures}, called as the command line calls it.
 *
 * @param code how it ended
 * @param complaint what it said on standard error
 * @param lines what people read
 * @param json what machines read
 */
record Call(int code, String complaint, List<String> lines, List<Json> json) {

    private static final KeptService ANY_HOME = new TestHouse(folder()).kept();

    static Call of(String... arguments) {
        return call(ANY_HOME, HeardTerminal.ofNobody(true), arguments);
    }

    static Call forPeople(String... arguments) {
        return call(ANY_HOME, HeardTerminal.ofNobody(false), arguments);
    }

    static Call call(KeptService kept, HeardTerminal heard, String... arguments) {
        AtomicReference<String> complaint = new AtomicReference<>("");
        int code = new CommandLine(new FiguresCommand(kept).commands(heard))
                .setParameterExceptionHandler((wrong, args) -> {
                    complaint.set(wrong.getMessage());
                    return 2;
                })
                .setExecutionExceptionHandler((failure, line, result) -> {
                    if (failure instanceof BadInput) {
                        complaint.set(failure.getMessage());
                        return 2;
                    }
                    throw failure;
                })
                .execute(arguments);
        return new Call(code, complaint.get(), heard.lines(), heard.values());
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory(Path.of("target"), "home");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the number at a path such as {@code lod50.value} or {@code se.0}. */
    double number(String path) {
        return ((Json.Num) at(path)).value().doubleValue();
    }

    Json at(String path) {
        Json here = json.get(0);
        for (String step : path.split("\\.")) {
            here = here instanceof Json.Arr array
                    ? array.items().get(Integer.parseInt(step))
                    : ((Json.Obj) here).get(step).orElseThrow(() -> new AssertionError(path + " in " + json));
        }
        return here;
    }
}
