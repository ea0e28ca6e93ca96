package wickbench.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A process that makes a file of a table.
 *
 * @param rows that the table has
 */
record Conversion(String name, List<String> command, Path made, int rows) implements Contestant {

    /** LibreOffice without a screen and with settings of its own, so that no other one that runs is asked. */
    static Conversion office(SampleTable table, Path work, String ending, String form, int rows) {
        Path out = work.resolve("office-out");
        List<String> command = List.of(
                "soffice",
                "-env:UserInstallation=" + work.resolve("office").toUri(),
                "--infilter=CSV:44,34,76", // comma, quote, UTF-8
                "--headless",
                "--convert-to",
                form,
                "--outdir",
                out.toString(),
                table.file().toString());
        return new Conversion("LibreOffice", command, out.resolve("table." + ending), rows);
    }

    /** Ours in a process that ends with it. */
    static Conversion ours(SampleTable table, Path work, String ending, String heap, int rows) {
        Path made = work.resolve("ours." + ending);
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xmx" + heap,
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                Printing.class.getName(),
                work.resolve("home").toString(),
                table.file().toString(),
                made.toString());
        return new Conversion("a fresh process", command, made, rows);
    }

    @Override
    public double lap() throws Exception {
        Files.deleteIfExists(made);
        return Timed.perSecond(rows, () -> {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (process.waitFor() != 0 || Files.size(made) < rows) {
                throw new IOException(String.join(" ", command) + " made no " + made);
            }
        });
    }
}
