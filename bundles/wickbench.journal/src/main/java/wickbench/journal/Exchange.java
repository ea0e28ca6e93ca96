package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.journal.SharedFiles;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.StationId;
import wickbench.api.journal.StationState;

/** Exchanges with the other stations over and over, on a thread of its own; a folder that does not answer holds up nobody else. */
final class Exchange implements Closeable {
    /** With the way through two programs, others see an entry within two seconds, on a busy machine too. */
    private static final long EVERY_MS = 200;
    /** So often the folder is looked through for what does not belong there. */
    private static final long THOROUGH_EVERY = 25;
    /** By so much clocks of machines that are looked after may differ. */
    private static final Duration AHEAD = Duration.ofMinutes(5);
    /** How long the end of the program waits for what is under way. */
    private static final long CLOSING_S = 3;

    private final Host host;
    private final ShareFolder share;
    private final InstantSource clock;
    private final Supplier<List<SharedFiles>> files;
    private final Publishing publishing;
    private final Map<StationId, Follower> followers = new TreeMap<>();
    private final Map<StationId, Instant> heard = new HashMap<>();
    private final List<String> notices = new ArrayList<>();
    private final List<String> waits = new ArrayList<>();
    private final List<String> around = new ArrayList<>();
    private final Set<String> folders = new TreeSet<>();
    private long passes;
    private Optional<Instant> cutOff = Optional.empty();
    private long exchanged = -1;
    private volatile Sharing sharing;
    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "wickbench-journal-share");
        thread.setDaemon(true);
        return thread;
    });

    /** @param files asked at each exchange for the files beside the journal */
    Exchange(Host host, Path share, InstantSource clock, UUID run, Supplier<List<SharedFiles>> files) {
        this.host = host;
        this.share = new ShareFolder(share);
        this.clock = clock;
        this.files = files;
        publishing = new Publishing(host, this.share, run);
        sharing = state();
    }

    void start() {
        timer.scheduleWithFixedDelay(() -> pass(passes % THOROUGH_EVERY == 0), 0, EVERY_MS, TimeUnit.MILLISECONDS);
    }

    Sharing sharing() {
        return sharing;
    }

    /** Exchanges once, now, and looks the folder through. */
    Sharing pass() {
        return pass(true);
    }

    private synchronized Sharing pass(boolean thorough) {
        passes++;
        notices.clear();
        waits.clear();
        try {
            share.reach();
            if (publishing.publish()) {
                exchanged = -1;
            }
            publishing.trouble().ifPresent(notices::add);
            if (publishing.waiting()) {
                notices.add(Say.words("own.waiting", host.own().folder().station(), share.folder()));
            } else {
                follow();
                exchangeFiles();
            }
            if (thorough) {
                lookAround();
            }
            notices.addAll(around);
            cutOff = Optional.empty();
        } catch (IOException e) {
            cutOff = cutOff.or(() -> Optional.of(clock.instant()));
            notices.add(Say.words("share.cut-off", share.folder(), EntryFiles.reason(e)));
        } catch (RuntimeException e) {
            // told, and tried again: a thread that ended here would leave the station alone without a word
            notices.add(Optional.ofNullable(e.getMessage()).orElseGet(e::toString));
        }
        sharing = state();
        return sharing;
    }

    private void follow() throws IOException {
        StationId own = host.own().folder().station();
        for (StationId station : share.stations()) {
            if (!station.equals(own)) {
                Follower follower = followers.computeIfAbsent(station, met -> new Follower(host, share.of(met)));
                hear(follower, follower.follow());
                follower.trouble().ifPresent(notices::add);
                follower.waits().ifPresent(waits::add);
                follower.setBack().ifPresent(notices::add);
                ahead(station).ifPresent(notices::add);
            }
        }
    }

    /** Says so when a station's newest entry was written later than it is here by now: one of the two clocks is wrong. */
    private Optional<String> ahead(StationId station) {
        Instant now = clock.instant();
        return host.copies()
                .station(station)
                .flatMap(copy -> copy.reading().entry(copy.kept(), copy.kept().size() - 1))
                .filter(newest -> newest.at().isAfter(now.plus(AHEAD)))
                .map(newest -> Say.words(
                        "clock.ahead", station, newest.ref(), newest.at(), now.truncatedTo(ChronoUnit.SECONDS)));
    }

    private void hear(Follower follower, List<Entry> news) {
        if (!news.isEmpty()) {
            heard.put(follower.station(), clock.instant());
            host.tell(news);
        }
    }

    /** Takes up what second writers under a station's name have left as evidence, and names what nobody of the house left. */
    private void lookAround() throws IOException {
        around.clear();
        share.strangers().forEach(file -> around.add(Say.words("share.stranger", file)));
        for (StationFolder branch : share.branches()) {
            Optional<Station> taken = host.own().folder().station().equals(branch.station())
                    ? Optional.of(host.own())
                    : host.copies().station(branch.station());
            Optional<Seal> seal =
                    taken.isPresent() ? Branch.seal(branch, taken.get().founded()) : Optional.empty();
            if (seal.isPresent()) {
                around.add(Follower.fork(host, branch, taken.get(), seal.get()));
            }
        }
    }

    private void exchangeFiles() throws IOException {
        long entries = host.own().kept().size()
                + host.copies().stations().stream()
                        .mapToLong(each ->
                                host.copies().station(each).orElseThrow().kept().size())
                        .sum();
        if (entries != exchanged) {
            for (SharedFiles each : files.get()) {
                folders.add(each.folder());
                beside().exchange(each);
            }
            exchanged = entries;
        }
    }

    private FileExchange beside() {
        return new FileExchange(
                host.disk(), host.layout().home(), share, host.own().folder().station());
    }

    private Sharing state() {
        List<StationState> states = new ArrayList<>();
        for (StationId station : host.copies().stations()) {
            states.add(state(host.copies().station(station).orElseThrow()));
        }
        return new Sharing(Optional.of(share.folder()), cutOff, publishing.published(), states, waits, notices);
    }

    private StationState state(Station station) {
        StationId id = station.folder().station();
        Kept kept = station.kept();
        return new StationState(
                id,
                kept.size(),
                station.reading().entry(kept, kept.size() - 1).map(Entry::at),
                new Hash(station.founded().key().fingerprint().hex()),
                Optional.ofNullable(heard.get(id)),
                Optional.ofNullable(followers.get(id)).flatMap(Follower::trouble));
    }

    /** Shows the others what was recorded last, unless the folder does not answer. */
    @Override
    public void close() {
        timer.execute(this::last);
        timer.shutdown();
        try {
            if (!timer.awaitTermination(CLOSING_S, TimeUnit.SECONDS)) {
                timer.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized void last() {
        try {
            share.reach();
            publishing.publish();
            // without asking those who know the files: at the end of the program they may be gone
            for (String folder : folders) {
                beside().show(folder);
            }
            publishing.release();
        } catch (IOException | Refusal e) {
            // the next run shows the others what this one could not
            cutOff = cutOff.or(() -> Optional.of(clock.instant()));
        }
    }
}
