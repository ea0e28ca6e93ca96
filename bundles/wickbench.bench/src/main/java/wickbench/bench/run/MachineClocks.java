package wickbench.bench.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * The clocks of this machine.
 *
 * <p>Linux counts in {@code /proc/uptime} since its start, sleep included (proc_uptime(5)), and names each start in {@code boot_id}, so that a span is
 * true over a closed lid and over a crash of this program. Elsewhere the steady clock is the one of this process: it may stand still while
 * the machine sleeps, so where the wall has gone further the longer span counts, and after a crash only the wall can tell.
 */
public final class MachineClocks implements Clocks {
    private static final Path UPTIME = Path.of("/proc/uptime");
    private static final Path BOOT = Path.of("/proc/sys/kernel/random/boot_id");

    private final InstantSource wall;
    private final String steady;
    private final Supplier<Duration> since;

    private MachineClocks(InstantSource wall, String steady, Supplier<Duration> since) {
        this.wall = wall;
        this.steady = steady;
        this.since = since;
    }

    /**
     * Returns the best clocks that this machine has.
     *
     * @param process names this run of the program, where nothing names the start of the machine
     */
    public static MachineClocks of(InstantSource wall, String process) {
        return Files.isReadable(UPTIME) && Files.isReadable(BOOT)
                ? ofBoot(wall, UPTIME, BOOT)
                : ofProcess(wall, process, System::nanoTime);
    }

    /** Returns clocks for a home with a simulated clock, which is all the time that passes there. */
    public static MachineClocks simulated(InstantSource wall) {
        return new MachineClocks(wall, "simulated", () -> Duration.ofMillis(wall.millis()));
    }

    static MachineClocks ofBoot(InstantSource wall, Path uptime, Path boot) {
        return new MachineClocks(wall, text(boot), () -> uptime(text(uptime)));
    }

    static MachineClocks ofProcess(InstantSource wall, String process, LongSupplier nanos) {
        Instant firstWall = wall.instant();
        long firstNanos = nanos.getAsLong();
        return new MachineClocks(
                wall,
                process,
                () -> longer(
                        Duration.ofNanos(nanos.getAsLong() - firstNanos), Duration.between(firstWall, wall.instant())));
    }

    @Override
    public Moment now() {
        return new Moment(wall.instant(), steady, since.get());
    }

    private static Duration longer(Duration one, Duration other) {
        return Duration.ofMillis(Math.max(one.toMillis(), other.toMillis()));
    }

    private static Duration uptime(String text) {
        return Duration.ofMillis(new BigDecimal(text.substring(0, text.indexOf(' ')))
                .movePointRight(3)
                .longValue());
    }

    private static String text(Path file) {
        try {
            return Files.readString(file).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
