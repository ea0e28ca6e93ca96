package wickbench.demo;

import java.io.ByteArrayInputStream;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import wickbench.api.attachment.Attachments;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.reading.RecordedReading;

/**
 * The last weeks of the plant book: everything stated, every changeover told, each line's clean shown to work, and one point that is
 * on a rule and that nobody samples.
 */
final class PlantWeeks implements Chapter {
    private static final int WEEKS = 10;
    private static final int RULED_WEEKS = 4;
    private static final int MENDED_DAYS = 12;
    private static final int WIDTH = 1600;
    private static final int HEIGHT = 1000;
    private static final LocalTime BOOK = LocalTime.of(4, 50);
    private static final Duration EVALUATED = Duration.ofHours(6);

    private final Plant plant;
    private final Span span;
    private final Agenda agenda;
    private final Doors doors;
    private final StockEntries entries;
    private final PlantSite site;
    private final PersonId quality;
    private final Map<String, CleanSeries> series = new LinkedHashMap<>();
    private final Map<String, List<Read>> read = new LinkedHashMap<>();
    private int changes;

    /** A strip that was read at a point of a line. */
    record Read(UUID entry, String place, MethodId method, Instant started, boolean negative, boolean invalid) {}

    PlantWeeks(Plant plant, Span span, Agenda agenda, Doors doors) {
        this.plant = plant;
        this.span = span;
        this.agenda = agenda;
        this.doors = doors;
        this.entries = new StockEntries(doors);
        this.site = DemoFiles.site();
        this.quality = plant.people().stream()
                .filter(worker -> worker.roles().contains(Role.REVIEWER))
                .map(Plant.Worker::id)
                .findFirst()
                .orElseThrow();
    }

    void plan() {
        LocalDate first = later(span.from().plusDays(1), span.until().minusWeeks(WEEKS));
        agenda.at(at(first, BOOK), this::state);
        agenda.at(at(later(first, span.until().minusWeeks(RULED_WEEKS)), BOOK), this::rule);
        agenda.at(at(later(first, span.until().minusDays(MENDED_DAYS)), LocalTime.of(12, 10)), this::mend);
        plant.lines().forEach(line -> changes(line, first));
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private Instant at(LocalDate day, LocalTime time) {
        return day.atTime(time).atZone(span.zone()).toInstant();
    }

    private void state() {
        for (PlantSite.Stated stated : site.stated()) {
            entries.later(quality, stated.kind(), stated.body());
        }
        for (Plant.Line line : plant.lines()) {
            CleanSeries begun = CleanSeries.of(plant, line);
            series.put(line.id(), begun);
            entries.later(quality, "validation.opened", begun.opened());
        }
        entries.flush();
        doors.attachments().ifPresent(this::picture);
    }

    private void picture(Attachments shelf) {
        byte[] bytes = DemoFiles.floor();
        Entry pictured = entries.write(
                quality,
                "floor.pictured",
                Json.object()
                        .with("content", Hash.ofContent(bytes).hex())
                        .with("width", WIDTH)
                        .with("height", HEIGHT)
                        .with("name", "floor.png"));
        shelf.add(new ByteArrayInputStream(bytes), "floor.png", pictured.ref(), quality);
        site.spots().forEach(spot -> entries.later(quality, "point.placed", spot));
        entries.flush();
    }

    private void rule() {
        site.rules().forEach(rule -> entries.later(quality, "rule.stated", rule));
        entries.flush();
    }

    private void mend() {
        entries.write(
                quality,
                "maintenance.done",
                Json.object()
                        .with("line", "L2")
                        .with("what", "Pump seal replaced")
                        .with("at", StockEntries.time(entries.now())));
    }

    private void changes(Plant.Line line, LocalDate first) {
        Plant.Product before = plant.product(line.week().get(line.week().size() - 1));
        for (LocalDate day : span.days()) {
            if (!plant.works(day)) {
                continue;
            }
            for (int shift = 0; shift < plant.shifts().size(); shift++) {
                Plant.Product now = plant.made(line, day, shift);
                if (!day.isBefore(first) && !now.equals(before)) {
                    change(line, before, now, at(day, plant.shifts().get(shift)));
                }
                before = now;
            }
        }
    }

    private void change(Plant.Line line, Plant.Product from, Plant.Product to, Instant at) {
        agenda.at(at, () -> {
            changes++;
            read.put(line.id(), new ArrayList<>());
            entries.write(
                    quality,
                    "changeover.made",
                    Json.object()
                            .with("line", line.id())
                            .with("from", from.id())
                            .with("to", to.id())
                            .with("at", StockEntries.time(at)));
        });
        agenda.at(at.plus(EVALUATED), () -> evaluate(line, from, to, at));
    }

    /** A clean after the worst product is one of the series, until three in a row have passed. */
    private void evaluate(Plant.Line line, Plant.Product from, Plant.Product to, Instant at) {
        CleanSeries under = series.get(line.id());
        if (under == null || under.confirmed() || !under.isFor(from, to)) {
            return;
        }
        entries.later(quality, "validation.ran", under.ran(at, read.getOrDefault(line.id(), List.of())));
        if (under.confirmed()) {
            entries.later(quality, "validation.confirmed", under.confirmation(span.dayOf(at)));
        }
        entries.flush();
    }

    @Override
    public void hear(RecordedReading recorded) {
        // only with its entry
    }

    @Override
    public void hear(UUID entry, RecordedReading recorded) {
        var reading = recorded.reading();
        boolean sample = reading.sample().control().isEmpty();
        reading.sample()
                .line()
                .filter(line -> sample)
                .map(read::get)
                .ifPresent(list -> list.add(new Read(
                        entry,
                        reading.sample().place(),
                        reading.method(),
                        reading.times().started().orElse(entries.now()),
                        recorded.verdict().outcome() == wickbench.api.reading.Outcome.NEGATIVE,
                        recorded.verdict().outcome() == wickbench.api.reading.Outcome.INVALID)));
    }

    @Override
    public Told told() {
        long shown = series.values().stream().filter(CleanSeries::confirmed).count();
        long runs = series.values().stream().mapToLong(CleanSeries::runs).sum();
        return new Told(
                "plant-weeks",
                List.of(
                        new Told.Count("changeovers_told", changes),
                        new Told.Count("cleans_in_series", runs),
                        new Told.Count("cleans_validated", shown)));
    }
}
