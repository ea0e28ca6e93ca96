package wickbench.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Starts a program in a process of its own and waits until it says that its window can be used. */
final class Started implements Contestant {
    private static final List<String> FLAGS = List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");
    private static final long PATIENCE_SECONDS = 30;

    private final String name;
    private final ProcessBuilder process;
    private final String word;

    private Started(String name, ProcessBuilder process, String word) {
        this.name = name;
        this.process = process.redirectErrorStream(true);
        this.word = word;
    }

    static Started product(Path product, Path home, Path work) {
        ProcessBuilder process =
                new ProcessBuilder(product.resolve("bin/wickbench").toString(), "--home", home.toString());
        process.environment().put("WICKBENCH_OPTS", "-Dwickbench.trace -Dwickbench.cache=" + work.resolve("cache"));
        process.environment().put("JAVA_HOME", System.getProperty("java.home"));
        return new Started("bin/wickbench", process, "desktop usable");
    }

    static Started bare(Path product, Path work) throws IOException {
        List<String> line = new java.util.ArrayList<>(List.of(java()));
        line.addAll(FLAGS);
        line.addAll(List.of(
                "-cp",
                product.resolve("lib") + "/*:" + classes(),
                BareStart.class.getName(),
                product.resolve("repo").toString(),
                work.resolve("bare").toString()));
        return new Started("bare Felix, SWT window, H2", new ProcessBuilder(line), BareStart.READY);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double lap() throws Exception {
        Process[] started = new Process[1];
        try {
            return Timed.millis(() -> {
                started[0] = process.start();
                awaitWord(started[0]);
            });
        } finally {
            started[0].destroy();
            if (!started[0].waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                started[0].destroyForcibly().waitFor();
            }
        }
    }

    private void awaitWord(Process running) throws IOException {
        BufferedReader said =
                new BufferedReader(new InputStreamReader(running.getInputStream(), StandardCharsets.UTF_8));
        StringBuilder all = new StringBuilder();
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            if (line.contains(word)) {
                return;
            }
            all.append(line).append('\n');
        }
        throw new IOException(name + " ended without a window:\n" + all);
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private static Path classes() {
        return Path.of(java.net.URI.create(BareStart.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toString()));
    }
}
