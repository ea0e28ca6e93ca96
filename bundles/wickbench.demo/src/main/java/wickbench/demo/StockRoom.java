package wickbench.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RecordedReading;

/**
 * The year of the stock room: a delivery before each lot is used, its check, opened pouches, the loggers week by week, a fridge
 * that fails over a weekend and what is decided of the lots inside, a count that differs, and a lot that nobody will use in time.
 */
final class StockRoom implements Chapter {
    static final LotId SPARE = new LotId("EG-SPARE");

    private static final int SPARE_BOXES = 10;
    private static final int SPARE_AFTER_MONTHS = 9;
    private static final int SPARE_DAYS = 24;
    private static final int FAILS_AFTER_MONTHS = 7;
    private static final int COUNTED_AFTER_MONTHS = 5;
    private static final int LOST = 3;
    private static final int LABEL_DAYS = 170;
    private static final int SHORTENED_DAYS = 60;
    private static final double RESERVE = 1.12;
    private static final LocalTime OPENS = LocalTime.of(5, 2);
    private static final LocalTime DELIVERED = LocalTime.of(14, 50);
    private static final LocalTime LOGGED = LocalTime.of(5, 10);

    private final Plant plant;
    private final StockPlan plan;
    private final Span span;
    private final Lots lots;
    private final StockEntries entries;
    private final Agenda agenda;
    private final List<Method> methods;
    private final Records records;
    private final Chance chance;
    private final Map<LotId, Held> held = new HashMap<>();
    private int deliveries;
    private int quarantined;

    /** What lies in the fridge of one lot. */
    private static final class Held {
        private final StockPlan.Bought kit;
        private final LocalDate expiry;
        private int strips;
        private int open;
        private boolean gone;

        Held(StockPlan.Bought kit, LocalDate expiry, int strips) {
            this.kit = kit;
            this.expiry = expiry;
            this.strips = strips;
        }
    }

    /** What the chapter works with beside the plant. */
    record Scene(Span span, Lots lots, Agenda agenda, Records records, List<Method> methods) {}

    StockRoom(Plant plant, StockPlan plan, Doors doors, Scene scene, Chance chance) {
        this.plant = plant;
        this.plan = plan;
        this.span = scene.span();
        this.lots = scene.lots();
        this.agenda = scene.agenda();
        this.records = scene.records();
        this.methods = scene.methods();
        this.entries = new StockEntries(doors);
        this.chance = chance;
    }

    /** Plans everything that is known beforehand. */
    void plan() {
        agenda.at(at(span.from(), OPENS), this::open);
        for (StockPlan.Bought kit : plan.kits()) {
            plan(kit);
        }
        plan.fridges().forEach(this::planLogs);
        agenda.at(at(span.after(COUNTED_AFTER_MONTHS), OPENS), this::count);
        span.days().stream().skip(1).forEach(day -> agenda.at(at(day, OPENS), entries::flush));
        LocalDate spare = workday(span.after(SPARE_AFTER_MONTHS));
        plan.kit("egg").ifPresent(kit -> deliver(kit, SPARE, spare, span.until().plusDays(SPARE_DAYS), SPARE_BOXES));
    }

    private void open() {
        PersonId keeper = keeper();
        plan.kits().forEach(kit -> entries.later(keeper, "kit.defined", kit.definition()));
        plan.fridges().forEach(fridge -> entries.later(keeper, "fridge.registered", registered(fridge)));
        plan.devices().forEach(device -> entries.later(keeper, "device.calibrated", calibrated(device)));
        entries.flush();
        for (StockPlan.Bought kit : plan.kits()) {
            LotId lot = lots.inUse(kit(kit), span.from());
            receive(kit, lot, span.from().plusDays(LABEL_DAYS), boxes(kit));
            entries.lot(
                    keeper,
                    "check-waived",
                    lot,
                    Json.object().with("reason", "In use already when the stock room was opened."));
        }
    }

    private static Json.Obj registered(StockPlan.Cold fridge) {
        return Json.object()
                .with("fridge", fridge.id())
                .with("name", fridge.name())
                .with("low", fridge.low())
                .with("high", fridge.high())
                .with("logger", fridge.logger());
    }

    private Json.Obj calibrated(StockPlan.Device device) {
        LocalDate day = span.from().minusDays(12);
        return Json.object()
                .with("device", device.id())
                .with("type", device.type())
                .with("name", device.name())
                .with("calibrated", day.toString())
                .with("due", day.plusDays(device.days()).toString());
    }

    /** Each lot but the first is delivered and checked on the last working day before it is used. */
    private void plan(StockPlan.Bought kit) {
        LotId before = lots.inUse(kit(kit), span.from());
        for (LocalDate day : span.days()) {
            LotId now = lots.inUse(kit(kit), day);
            if (!now.equals(before)) {
                LotId old = before;
                deliver(kit, now, workday(day.minusDays(1)), day.plusDays(LABEL_DAYS), boxes(kit));
                agenda.at(at(day.plusDays(2), LOGGED), () -> discard(old));
            }
            before = now;
        }
    }

    private void deliver(StockPlan.Bought kit, LotId lot, LocalDate day, LocalDate expiry, int boxes) {
        Instant came = at(day, DELIVERED);
        if (day.isAfter(span.from())) {
            agenda.at(came, () -> receive(kit, lot, expiry, boxes));
            Method method = methods.stream()
                    .filter(each -> each.kit().equals(kit(kit).name()))
                    .findFirst()
                    .orElseThrow();
            Instant begins = came.plus(Duration.ofMinutes(50));
            Instant done = begins.plus(method.timing().develop()).plus(Duration.ofMinutes(5));
            agenda.at(done, () -> check(lot, method, begins));
        }
    }

    private void receive(StockPlan.Bought kit, LotId lot, LocalDate expiry, int boxes) {
        entries.received(keeper(), lot, kit, expiry, boxes);
        held.put(lot, new Held(kit, expiry, boxes * kit.stripsInBox()));
        deliveries++;
    }

    private void check(LotId lot, Method method, Instant begins) {
        PersonId operator = plant.operators().get(0);
        List<Kept> kept = records.check(LotChecks.strips(lot, method, operator, begins), operator);
        kept.forEach(each -> use(each.reading()));
        List<UUID> ids = kept.stream().map(Kept::id).toList();
        entries.checked(keeper(), lot, ids);
    }

    /** Throws away what is left of a lot once another is in use. */
    private void discard(LotId lot) {
        Held of = held.get(lot);
        if (of != null && !of.gone) {
            of.gone = true;
            entries.lot(keeper(), "destroyed", lot, Json.object().with("reason", "Rest of a lot after its last use."));
        }
    }

    private void count() {
        LotId lot = lots.inUse(kit(plan.kits().get(0)), span.dayOf(entries.now()));
        Held of = held.get(lot);
        if (of != null) {
            int each = of.kit.stripsInPouch();
            int found = Math.max(0, of.strips - LOST);
            int pouches = Math.max(0, of.strips - of.open) / each;
            int loose = found - Math.min(pouches, found / each) * each;
            entries.lot(
                    keeper(),
                    "counted",
                    lot,
                    Json.object()
                            .with("pouches", (found - loose) / each)
                            .with("loose", loose)
                            .with("others", Json.object())
                            .with("expected", Json.object().with("strip", of.strips))
                            .with("reason", LOST + " strips fell on the wet floor and were thrown away unread."));
            of.strips = found;
            of.open = loose;
        }
    }

    private void planLogs(StockPlan.Cold fridge) {
        Instant failure = failure();
        for (LocalDate monday : span.days()) {
            boolean whole = monday.minusDays(7).compareTo(span.from()) >= 0;
            if (whole && monday.getDayOfWeek() == java.time.DayOfWeek.MONDAY) {
                Instant until = at(monday, LocalTime.of(5, 0));
                Instant from = until.minus(Duration.ofDays(7));
                boolean fails = fridge == plan.fridges().get(0) && failure.isAfter(from) && failure.isBefore(until);
                Optional<Instant> failed = fails ? Optional.of(failure) : Optional.empty();
                agenda.at(at(monday, LOGGED), () -> log(new FridgeWeek(fridge, from, failed, chance), fridge));
            }
        }
    }

    /** A Saturday night, when nobody looks. */
    private Instant failure() {
        LocalDate saturday = span.after(FAILS_AFTER_MONTHS).with(TemporalAdjusters.next(java.time.DayOfWeek.SATURDAY));
        return at(saturday, LocalTime.of(22, 0));
    }

    private void log(FridgeWeek week, StockPlan.Cold fridge) {
        UUID log = entries.write(keeper(), "fridge.logged", week.body()).id();
        week.excursions().stream()
                .filter(warm -> Duration.between(warm.from(), warm.to()).toMinutes() > 90)
                .findFirst()
                .ifPresent(warm -> quarantine(warm, fridge, log));
    }

    private void quarantine(FridgeWeek.Warm warm, StockPlan.Cold fridge, UUID log) {
        List<LotId> inside = new ArrayList<>(held.keySet().stream()
                .filter(lot -> !held.get(lot).gone && held.get(lot).kit.fridge().equals(fridge.id()))
                .sorted(java.util.Comparator.comparing(LotId::value))
                .toList());
        for (LotId lot : inside) {
            UUID entry = entries.lot(
                            keeper(),
                            "quarantined",
                            lot,
                            warm.from(),
                            Json.object()
                                    .with("cause", "warm")
                                    .with(
                                            "reason",
                                            fridge.id() + " " + warm.from() + "/" + warm.to() + " "
                                                    + warm.peak().toPlainString() + " °C")
                                    .with("about", log.toString()))
                    .id();
            quarantined++;
            boolean shortens = lot.equals(inside.get(0));
            agenda.at(entries.now().plus(Duration.ofMinutes(20)), () -> decide(lot, entry, shortens));
        }
    }

    /** A reviewer decides before the first shift. */
    private void decide(LotId lot, UUID quarantine, boolean shortens) {
        Json.Obj facts = Json.object()
                .with("quarantines", Json.texts(List.of(quarantine.toString())))
                .with(
                        "reason",
                        "Blank and low positive read as they must after the weekend; kept shorter where the label is"
                                + " long.");
        Json.Obj decided = shortens
                ? facts.with(
                        "until", held.get(lot).expiry.minusDays(SHORTENED_DAYS).toString())
                : facts;
        entries.lot(reviewer(), "released", lot, decided);
    }

    @Override
    public void hear(RecordedReading recorded) {
        use(recorded);
    }

    private void use(RecordedReading recorded) {
        Held of = held.get(recorded.reading().lot());
        if (of == null) {
            return;
        }
        if (of.open == 0) {
            of.open = of.kit.stripsInPouch();
            recorded.reading()
                    .times()
                    .started()
                    .ifPresent(at -> entries.opened(
                            recorded.reading().operator(), recorded.reading().lot(), at));
        }
        of.open--;
        of.strips--;
    }

    @Override
    public Told told() {
        return new Told(
                "stock-room",
                List.of(new Told.Count("deliveries", deliveries), new Told.Count("quarantined", quarantined)));
    }

    private int boxes(StockPlan.Bought kit) {
        double strips = kit(kit).lotWeeks() * kit.stripsAWeek() * RESERVE;
        return (int) Math.ceil(strips / kit.stripsInBox());
    }

    private Plant.Kit kit(StockPlan.Bought bought) {
        return plant.kits().stream()
                .filter(kit -> kit.id().equals(bought.id()))
                .findFirst()
                .orElseThrow();
    }

    private LocalDate workday(LocalDate day) {
        LocalDate work = day;
        while (!plant.works(work)) {
            work = work.minusDays(1);
        }
        return work;
    }

    private Instant at(LocalDate day, LocalTime time) {
        return day.atTime(time).atZone(span.zone()).toInstant();
    }

    private PersonId keeper() {
        return with(Role.STOCK_KEEPER);
    }

    private PersonId reviewer() {
        return with(Role.REVIEWER);
    }

    private PersonId with(Role role) {
        return plant.people().stream()
                .filter(worker -> worker.roles().contains(role))
                .map(Plant.Worker::id)
                .findFirst()
                .orElseThrow();
    }
}
