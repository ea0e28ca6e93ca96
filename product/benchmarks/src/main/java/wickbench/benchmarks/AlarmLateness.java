package wickbench.benchmarks;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import wickbench.api.authority.Passphrase;
import wickbench.api.lot.LotId;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.bench.run.Alarm;
import wickbench.bench.run.Moment;
import wickbench.bench.run.OpenRuns;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunListener;
import wickbench.bench.run.RunState;
import wickbench.bench.run.RunStrip;

/**
 * How late the alarms of a whole shift ring, through the program's own runs: real threads, each event forced to a disk; only
 * the shift's clock goes faster.
 */
final class AlarmLateness implements Contest {
    private static final int STRIPS = 1_000;
    private static final Duration SHIFT = Duration.ofHours(8);
    private static final Duration DEVELOP = Duration.ofMinutes(5);
    private static final Duration WINDOW = Duration.ofMinutes(1);
    private static final Duration LOOKED = Duration.ofSeconds(320);
    private static final int LOST = 1_000_000;

    private final int faster;

    /** @param faster how many seconds of the shift go by in one */
    AlarmLateness(int faster) {
        this.faster = faster;
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "alarms of %,d strips in 8 hours, 99 of 100 ring after at most", STRIPS);
    }

    @Override
    public Unit unit() {
        return Unit.MILLIS;
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
    public Field field(Path folder) {
        return new Field(new Shift(folder), List.of(new Baseline(new Limit(), 1)));
    }

    private record Limit() implements Contestant {
        @Override
        public String name() {
            return "a fixed limit";
        }

        @Override
        public double lap() {
            return 100;
        }
    }

    private final class Shift implements Contestant {
        private final Path folder;
        private final long began = System.nanoTime();
        private final List<Alarm> rung = Collections.synchronizedList(new ArrayList<>());

        Shift(Path folder) {
            this.folder = folder;
        }

        @Override
        public String name() {
            return "the runs of the bench";
        }

        @Override
        public double lap() throws Exception {
            ExecutorService thread = Executors.newSingleThreadExecutor();
            ScheduledExecutorService bells = Executors.newSingleThreadScheduledExecutor();
            try (OpenRuns runs = new OpenRuns(
                    folder,
                    this::now,
                    thread,
                    (wait, act) -> in(bells, wait, act),
                    new NoDoor(),
                    (draft, run) -> {},
                    UUID::randomUUID)) {
                Run run = runs.begin(
                                IntStream.rangeClosed(1, STRIPS)
                                        .mapToObj(AlarmLateness::strip)
                                        .toList(),
                                PERSON)
                        .get();
                Run.Listening hearing = run.listen(new Hearing());
                work(run, bells);
                hearing.close();
            } finally {
                bells.shutdownNow();
                thread.shutdown();
            }
            return late();
        }

        private Moment now() {
            Duration since = Duration.ofNanos((System.nanoTime() - began) * faster);
            return new Moment(Instant.EPOCH.plus(since), "bench", since);
        }

        private void in(ScheduledExecutorService bells, Duration wait, Runnable act) {
            bells.schedule(act, wait.toNanos() / faster, TimeUnit.NANOSECONDS);
        }

        /** Starts strips one after the other and looks at two of three; the third is forgotten. */
        private void work(Run run, ScheduledExecutorService bells) throws InterruptedException {
            Duration step = SHIFT.minusMinutes(10).dividedBy(STRIPS);
            CountDownLatch over = new CountDownLatch(1);
            ScheduledExecutorService hands = Executors.newSingleThreadScheduledExecutor();
            for (int strip = 1; strip <= STRIPS; strip++) {
                int number = strip;
                in(hands, step.multipliedBy(strip), () -> run.happened(new RunEvent.Started(number), run.now()));
                if (strip % 3 != 0) {
                    in(
                            hands,
                            step.multipliedBy(strip).plus(LOOKED),
                            () -> run.happened(new RunEvent.Looked(number), run.now()));
                }
            }
            in(hands, SHIFT, over::countDown);
            over.await();
            hands.shutdownNow();
        }

        /** In milliseconds of the machine; a lost alarm is later than all. */
        private double late() {
            int expected = STRIPS + 2 * (STRIPS / 3);
            if (rung.size() < expected) {
                return LOST;
            }
            List<Double> late = rung.stream()
                    .map(alarm -> alarm.late().toNanos() / 1e6 / faster)
                    .sorted()
                    .toList();
            return late.get((int) Math.ceil(late.size() * 0.99) - 1);
        }

        private final class Hearing implements RunListener {
            @Override
            public void changed(RunState run) {
                // only what rings is counted
            }

            @Override
            public void ring(List<Alarm> alarms) {
                rung.addAll(alarms);
            }
        }
    }

    private static final PersonId PERSON = new PersonId("op-01");

    private static RunStrip strip(int number) {
        Reading unread = new Reading(
                new Sample(
                        "S" + number,
                        "filler",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        BigDecimal.ONE,
                        Optional.empty()),
                new MethodId("nut-rinse"),
                Route.RINSE,
                new LotId("L1"),
                PERSON,
                Optional.empty(),
                new Times(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                new Strip(Format.SANDWICH, Map.of(LineRole.CONTROL, Seen.DAMAGED, LineRole.TEST, Seen.DAMAGED)),
                Optional.empty(),
                Map.of(),
                new Reading.Origin.Bench());
        return new RunStrip(number, unread, DEVELOP, WINDOW, Optional.empty(), false);
    }

    /** No strip of the shift is read to its end. */
    private static final class NoDoor implements ReadingDoor {
        @Override
        public List<RecordedReading> judge(List<Reading> run) {
            throw new IllegalStateException("nothing is judged");
        }

        @Override
        public List<Kept> record(List<Reading> run, PersonId by) {
            throw new IllegalStateException("nothing is recorded");
        }

        @Override
        public Kept correct(UUID corrects, Reading now, String reason, PersonId by, Optional<Passphrase> passphrase) {
            throw new IllegalStateException("nothing is corrected");
        }
    }
}
