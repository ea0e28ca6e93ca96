package wickbench.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What an edition takes on the disk once unpacked, its Java with it, against a fixed limit. */
record EditionSize(String edition) implements Contest {
    private static final double LIMIT_MB = 90;
    private static final double BYTES_PER_MB = 1_000_000;

    @Override
    public String figure() {
        return "edition " + edition + ", unpacked";
    }

    @Override
    public Unit unit() {
        return Unit.MEGABYTES;
    }

    @Override
    public int rounds() {
        return 1;
    }

    @Override
    public int warmUps() {
        return 0;
    }

    @Override
    public Field field(Path folder) throws Exception {
        return new Field(new Unpacked(laid(folder)), List.of(new Baseline(new Limit(), 1)));
    }

    /** Lays the edition for this machine as {@code product/editions} does, and returns its folder. */
    private Path laid(Path folder) throws Exception {
        String product = System.getProperty("wickbench.product");
        Path out = Files.createDirectories(folder.resolve("editions"));
        int code = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("wickbench.packing") + ":" + product + "/lib/*",
                        "wickbench.packing.Editions",
                        product,
                        System.getProperty("wickbench.editions"),
                        out.toString(),
                        edition)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start()
                .waitFor();
        if (code != 0) {
            throw new IOException("the edition " + edition + " was not laid");
        }
        try (Stream<Path> all = Files.walk(out)) {
            return all.filter(path -> path.endsWith("runtime"))
                    .map(Path::getParent)
                    .findFirst()
                    .orElseThrow();
        }
    }

    private record Unpacked(Path folder) implements Contestant {
        @Override
        public String name() {
            return folder.getFileName().toString();
        }

        @Override
        public double lap() throws IOException {
            try (Stream<Path> all = Files.walk(folder)) {
                return all.filter(Files::isRegularFile)
                                .mapToLong(file -> file.toFile().length())
                                .sum()
                        / BYTES_PER_MB;
            }
        }
    }

    private record Limit() implements Contestant {
        @Override
        public String name() {
            return "a fixed limit";
        }

        @Override
        public double lap() {
            return LIMIT_MB;
        }
    }
}
