package wickbench.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** The desktop of the built product, open on a home in a process of its own. */
record HoldingDesktop(Process process, Path home, Path said) implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    /** Opens it and returns once it answers for its home. */
    static HoldingDesktop open(Program program, Path home) throws IOException, InterruptedException {
        Path said = Files.createTempFile(program.temporary(), "desktop", "");
        Process process = program.process("--home", home.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        HoldingDesktop desktop = new HoldingDesktop(process, home, said);
        desktop.await(() -> Files.exists(home.resolve("door/key.json")));
        return desktop;
    }

    /** Ends it as a power cut would: it cannot tidy up. */
    void kill() {
        process.destroyForcibly()
                .onExit()
                .orTimeout(PATIENCE.toSeconds(), TimeUnit.SECONDS)
                .join();
    }

    private void await(BooleanSupplier there) throws IOException, InterruptedException {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!there.getAsBoolean()) {
            if (!process.isAlive() || System.nanoTime() > end) {
                throw new IllegalStateException("the desktop does not hold its home: " + Files.readString(said));
            }
            Thread.sleep(50);
        }
    }

    @Override
    public void close() {
        process.destroy();
        process.onExit().orTimeout(PATIENCE.toSeconds(), TimeUnit.SECONDS).join();
    }
}
