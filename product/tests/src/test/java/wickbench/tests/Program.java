package wickbench.tests;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Calls the built program as a process of its own, as a person would who stands in the temporary folder. */
record Program(Path product, Path temporary) {

    Program(Path temporary) {
        this(BuiltProduct.folder(), temporary);
    }

    /** Calls it with a home below the temporary folder and waits for its answer. */
    Answer call(String... arguments) throws IOException, InterruptedException {
        return told("", arguments);
    }

    /** Calls it and types something on its standard input. */
    Answer told(String typed, String... arguments) throws IOException, InterruptedException {
        Path in = Files.writeString(Files.createTempFile(temporary, "in", ""), typed);
        Path out = Files.createTempFile(temporary, "out", "");
        Path err = Files.createTempFile(temporary, "err", "");
        int code = process(arguments)
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start()
                .waitFor();
        return new Answer(
                code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }

    /** The process of a call, not yet started. */
    ProcessBuilder process(String... arguments) {
        var line = new ArrayList<>(
                List.of(BuiltProduct.folder().resolve("bin/wickbench").toString()));
        line.addAll(List.of(arguments));
        var process = new ProcessBuilder(line).directory(temporary.toFile());
        process.environment().put("XDG_CACHE_HOME", temporary.resolve("caches").toString());
        process.environment().put("XDG_DATA_HOME", temporary.resolve("data").toString());
        process.environment().put("WICKBENCH_OPTS", "-Dwickbench.product=" + product);
        process.environment().put("JAVA_HOME", System.getProperty("java.home"));
        return process;
    }
}
