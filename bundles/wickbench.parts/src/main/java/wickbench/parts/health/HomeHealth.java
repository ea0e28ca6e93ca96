package wickbench.parts.health;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.part.Health;
import wickbench.api.part.Health.Of;
import wickbench.api.part.Health.State;
import wickbench.api.words.Decimals;
import wickbench.parts.words.PartsWords;

/** Whether the machine has room for records and tells the time. */
final class HomeHealth {
    private static final long MIB = 1 << 20;

    /** A year of a busy bench with its index takes less. */
    private static final long ENOUGH = 1024 * MIB;

    private static final long TOO_LITTLE = 100 * MIB;

    /** What a clock may be behind the newest entry while it is being set right in small steps. */
    private static final Duration SLACK = Duration.ofMinutes(1);

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    private final Home home;
    private final Journal journal;

    HomeHealth(Home home, Journal journal) {
        this.home = home;
        this.journal = journal;
    }

    Health disk() {
        long free = free(home.folder());
        return disk(free);
    }

    static Health disk(long free) {
        State state = free < TOO_LITTLE ? State.UNWELL : free < ENOUGH ? State.MINDED : State.WELL;
        return new Health(Of.DISK, state, PartsWords.get("health.disk." + state.code(), Decimals.grouped(free / MIB)));
    }

    Health clock() {
        Instant now = home.clock().instant();
        Optional<Founding> founding = founding();
        return clock(
                now,
                founding.map(Founding::zone).orElseGet(ZoneId::systemDefault),
                founding.flatMap(this::newest),
                founding.filter(Founding::simulated).isPresent());
    }

    static Health clock(Instant now, ZoneId zone, Optional<Instant> newest, boolean simulated) {
        String shown = TIME.format(now.atZone(zone));
        if (simulated) {
            return new Health(Of.CLOCK, State.MINDED, PartsWords.get("health.clock.simulated", shown));
        }
        return newest.filter(written -> written.isAfter(now.plus(SLACK)))
                .map(written -> new Health(
                        Of.CLOCK,
                        State.UNWELL,
                        PartsWords.get("health.clock.behind", shown, TIME.format(written.atZone(zone)))))
                .orElseGet(() -> new Health(Of.CLOCK, State.WELL, PartsWords.get("health.clock", shown, zone)));
    }

    /** A journal that cannot be opened tells so itself; the clock is then shown alone. */
    private Optional<Founding> founding() {
        try {
            return home.isBegun() ? journal.founding() : Optional.empty();
        } catch (Refusal unopened) {
            return Optional.empty();
        }
    }

    private Optional<Instant> newest(Founding founding) {
        long size = journal.size(founding.station());
        return size == 0
                ? Optional.empty()
                : journal.entry(new EntryRef(founding.station(), size - 1)).map(Entry::at);
    }

    /** A home not made yet will lie where its nearest folder lies. */
    private static long free(Path folder) {
        Path there = folder;
        while (!Files.exists(there)) {
            there = there.getParent();
        }
        try {
            return Files.getFileStore(there).getUsableSpace();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
