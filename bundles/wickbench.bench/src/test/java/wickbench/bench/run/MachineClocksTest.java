package wickbench.bench.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MachineClocksTest {
    private static final Instant EIGHT = Instant.parse("2026-03-02T08:00:00Z");

    @TempDir
    private Path folder;

    @Test
    void counts_since_the_machine_was_started_and_names_that_start() throws IOException {
        Path uptime = Files.writeString(folder.resolve("uptime"), "12345.67 999.00\n");
        Path boot = Files.writeString(folder.resolve("boot_id"), "0b9f-1\n");

        Moment first = MachineClocks.ofBoot(() -> EIGHT, uptime, boot).now();
        Files.writeString(uptime, "12355.70 999.00\n");
        Moment then = MachineClocks.ofBoot(() -> EIGHT, uptime, boot).now();

        assertThat(first).isEqualTo(new Moment(EIGHT, "0b9f-1", Duration.ofMillis(12_345_670)));
        assertThat(then.after(first)).isEqualTo(new Moment.Elapsed(Duration.ofMillis(10_030), true));
    }

    @Test
    void a_process_clock_that_slept_with_the_machine_gives_way_to_the_wall() {
        AtomicLong nanos = new AtomicLong(5);
        AtomicReference<Instant> wall = new AtomicReference<>(EIGHT);
        MachineClocks clocks = MachineClocks.ofProcess(wall::get, "p-1", nanos::get);
        Moment first = clocks.now();

        nanos.addAndGet(Duration.ofSeconds(3).toNanos());
        wall.set(EIGHT.plusSeconds(1200));

        assertThat(clocks.now().after(first).span()).isEqualTo(Duration.ofMinutes(20));
    }

    @Test
    void after_the_machine_was_started_anew_only_the_wall_can_tell() {
        Moment before = new Moment(EIGHT, "one", Duration.ofHours(9));
        Moment after = new Moment(EIGHT.plusSeconds(200), "other", Duration.ofSeconds(30));

        assertThat(after.after(before)).isEqualTo(new Moment.Elapsed(Duration.ofSeconds(200), false));
        assertThat(after.wallMovedSince(before)).isZero();
    }

    @Test
    void this_machine_has_clocks_that_go_on() throws InterruptedException {
        MachineClocks clocks = MachineClocks.of(() -> EIGHT, "p-1");
        Moment first = clocks.now();
        Thread.sleep(30);

        assertThat(clocks.now().after(first).span()).isPositive();
    }
}
