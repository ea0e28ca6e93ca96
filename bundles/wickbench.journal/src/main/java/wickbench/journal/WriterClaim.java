package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;

/** Sees to it that one run of the program alone writes under a station's name; for one thread. */
final class WriterClaim {
    /** How often a run that writes shows that it lives. */
    static final Duration BEAT = Duration.ofSeconds(2);
    /** A mark that has not changed for so long was left by a run that died. */
    static final Duration DEAD = Duration.ofSeconds(6);

    private final Disk disk;
    private final Path folder;
    private final Path home;
    private final UUID run;
    /** The run of this home before this one, which ended: two programs cannot hold one home. */
    private Optional<UUID> before = Optional.empty();

    private long beat;
    private long beatAt;
    private Optional<WriterMark> other = Optional.empty();
    private long otherAt;
    private boolean held;

    /**
     * @param folder of the station in the shared folder
     * @param home where this run leaves its mark too, for the next one
     */
    WriterClaim(Disk disk, Path folder, Path home, UUID run) {
        this.disk = disk;
        this.folder = folder;
        this.home = home;
        this.run = run;
    }

    /** Whether this run may write now. */
    enum Answer {
        WRITE,
        /** Another run wrote here last; whether it lives shows in some seconds. */
        WAIT,
        /** Another run lives, under the same name. */
        TAKEN
    }

    /** @param now of a clock that only goes forward, in nanoseconds */
    Answer ask(long now) throws IOException {
        Optional<WriterMark> found = WriterMark.read(folder);
        if (!held) {
            before = WriterMark.read(home).map(WriterMark::run);
        }
        boolean foreign = found.map(WriterMark::run)
                .filter(other -> !other.equals(run) && !before.equals(Optional.of(other)))
                .isPresent();
        if (held && foreign) {
            return Answer.TAKEN;
        }
        return foreign ? watch(found, now) : hold(now);
    }

    private Answer watch(Optional<WriterMark> found, long now) throws IOException {
        if (other.isPresent() && !other.equals(found)) {
            return Answer.TAKEN;
        }
        if (other.isEmpty()) {
            other = found;
            otherAt = now;
        }
        return now - otherAt < DEAD.toNanos() ? Answer.WAIT : hold(now);
    }

    private Answer hold(long now) throws IOException {
        if (!held || now - beatAt >= BEAT.toNanos()) {
            beat++;
            if (!held) {
                new WriterMark(run, beat).write(disk, home);
            }
            new WriterMark(run, beat).write(disk, folder);
            beatAt = now;
            held = true;
        }
        return Answer.WRITE;
    }

    /** Says that this run writes no more. */
    void release() throws IOException {
        if (held
                && WriterMark.read(folder)
                        .filter(mark -> mark.run().equals(run))
                        .isPresent()) {
            Files.deleteIfExists(folder.resolve(ShareFolder.WRITER));
        }
        held = false;
    }
}
