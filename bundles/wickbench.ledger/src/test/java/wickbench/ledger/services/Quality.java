package wickbench.ledger.services;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import wickbench.api.check.Refusal;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.owed.CleanDone;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.progress.Progress;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.report.ReportPrinter;
import wickbench.attachments.AttachmentView;
import wickbench.bench.BenchView;
import wickbench.bench.owed.OwedDesk;
import wickbench.bench.owed.OwedView;
import wickbench.ledger.acts.Deciding;
import wickbench.ledger.acts.Deciding.Wish;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Releasing;
import wickbench.ledger.acts.Reviewing;
import wickbench.ledger.acts.Subject;
import wickbench.ledger.desk.ActsView;
import wickbench.ledger.services.Strips.Plain;
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseSignIn;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.RecoveryView;
import wickbench.people.Roster;
import wickbench.reading.Judgement;
import wickbench.reading.Surroundings;
import wickbench.testing.DatabaseTool;

/** Quality's side of an invented plant: people with roles, a line with a plan, and a batch that was tested. */
final class Quality implements AutoCloseable {
    static final PersonId ADA = new PersonId("ada");
    static final PersonId REVIEWER = new PersonId("rui");
    static final PersonId RELEASER = new PersonId("lea");
    static final PersonId TESTER = Strips.OPERATOR;
    static final String LINE = "L1";
    static final String BATCH = "B-7";
    static final Point NOZZLE = new Point("filler nozzle", new MethodId("hazelnut-rinse"));
    static final Point HOPPER = new Point("hopper", new MethodId("hazelnut-rinse"));

    final TestSite site;
    final OwedDesk owed;
    final Reviewing reviewing;
    final Deciding deciding;
    final Releasing releasing;
    final Doors doors;
    private final PeopleService people;

    Quality() throws IOException {
        site = new TestSite(
                Files.createTempDirectory("wickbench-quality"),
                new LedgerView(),
                new ActsView(),
                new BenchView(),
                new OwedView(),
                new PeopleView(),
                new RecoveryView(),
                new AttachmentView());
        Roster roster = new Roster(site.home, site.journal, site.index);
        HouseSignIn signIn = HouseSignIn.at(HashCost.LEAST, site.home, site.journal, site.index, roster);
        HouseAuthority authority = new HouseAuthority(site.home, roster, signIn, at -> Optional.empty());
        Keeping keeping = new Keeping(site.home, site.journal, roster, at -> Optional.empty());
        people = new PeopleService(site.home, site.journal, roster, authority, keeping);
        people.enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        people.enrol(REVIEWER, "Rui Paz", Set.of(Role.REVIEWER), ADA);
        people.enrol(RELEASER, "Lea Vogt", Set.of(Role.RELEASER), ADA);
        people.enrol(TESTER, "Tom Ode", Set.of(Role.OPERATOR, Role.RELEASER, Role.REVIEWER), ADA);
        owed = new OwedDesk(site.journal, site.index, authority);
        doors = site.doors(Optional.of(owed), authority);
        reviewing = doors.reviewing();
        deciding = doors.deciding();
        releasing = doors.releasing();
    }

    /** Returns a plant whose batch may go. */
    static Quality tested() throws IOException {
        Quality quality = new Quality();
        quality.plan(NOZZLE, HOPPER);
        quality.control("C-1", Seen.SEEN, Strips.START);
        quality.negative("S-1", NOZZLE, Strips.START.plusSeconds(600));
        quality.negative("S-2", HOPPER, Strips.START.plusSeconds(1200));
        return quality;
    }

    void plan(Point... points) {
        releasing.plan(new ReleasePlan(LINE, List.of(points), "the food-safety plan"), REVIEWER, Optional.empty());
    }

    Entry negative(String sample, Point point, Instant at) {
        return read(sample, point, at, Seen.SEEN, Seen.NOT_SEEN, Optional.empty());
    }

    Entry positive(String sample, Point point, Instant at) {
        return read(sample, point, at, Seen.SEEN, Seen.SEEN, Optional.empty());
    }

    Entry control(String sample, Seen test, Instant at) {
        return read(sample, NOZZLE, at, Seen.SEEN, test, Optional.of(RunControl.LOW_POSITIVE));
    }

    Entry read(String sample, Point point, Instant at, Seen control, Seen test, Optional<RunControl> run) {
        return site.record(judged(sample, point, at, control, test, run, Route.RINSE));
    }

    /** Reads the strip of a food sample. */
    Entry food(String sample, Instant at, Seen test) {
        return site.record(judged(sample, NOZZLE, at, Seen.SEEN, test, Optional.empty(), Route.FOOD_LIQUID));
    }

    static RecordedReading judged(
            String sample, Point point, Instant at, Seen control, Seen test, Optional<RunControl> run, Route route) {
        Method method = route(Strips.method(point.method().value()), route);
        Reading plain =
                Strips.reading(Plain.negative(sample).seen(control, test).at(at));
        Sample was = plain.sample();
        Sample taken = new Sample(
                sample,
                point.place(),
                Optional.of(LINE),
                run.isPresent() ? Optional.empty() : Optional.of(BATCH),
                was.reason(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ONE,
                run);
        Reading reading = new Reading(
                taken,
                point.method(),
                route,
                plain.lot(),
                TESTER,
                Optional.empty(),
                plain.times(),
                new Strip(
                        Format.SANDWICH_HOOK,
                        Map.of(LineRole.CONTROL, control, LineRole.HOOK, Seen.SEEN, LineRole.TEST, test)),
                Optional.empty(),
                Map.of(),
                plain.origin());
        return new RecordedReading(reading, method, List.of(), Judgement.judge(method, reading, Surroundings.none()));
    }

    /** Returns the same strip of another batch. */
    static RecordedReading ofBatch(RecordedReading like, String batch) {
        Reading reading = like.reading();
        Sample was = reading.sample();
        Sample other = new Sample(
                was.code(),
                was.place(),
                was.line(),
                Optional.of(batch),
                was.reason(),
                was.reasonText(),
                was.visual(),
                was.area(),
                was.dilution(),
                was.control());
        Reading moved = new Reading(
                other,
                reading.method(),
                reading.route(),
                reading.lot(),
                reading.operator(),
                reading.observer(),
                reading.times(),
                reading.strip(),
                reading.second(),
                reading.preChecks(),
                reading.origin());
        return new RecordedReading(moved, like.method(), like.answers(), like.verdict());
    }

    private static Method route(Method method, Route route) {
        return new Method(
                method.ref(),
                method.title(),
                method.kit(),
                method.insertRevision(),
                method.target(),
                method.format(),
                method.marks(),
                route,
                method.limit(),
                method.positiveFrom(),
                method.hookOnset(),
                method.faintTest(),
                method.timing(),
                method.amounts(),
                method.storage(),
                method.preChecks(),
                method.steps(),
                method.cautions());
    }

    void clean(String place, Instant ended) {
        owed.cleaned(new CleanDone(place, Optional.of(LINE), "foam and rinse", TESTER, ended), TESTER);
    }

    /** Cleans, names no neighbours, and tests the point anew. */
    Entry cleared(UUID positive, Point point, Instant from) {
        clean(point.place(), from);
        owed.neighbours(positive, List.of(), TESTER);
        control("C-" + from.getEpochSecond(), Seen.SEEN, from.plusSeconds(60));
        return negative("R-" + from.getEpochSecond(), point, from.plusSeconds(600));
    }

    Entry append(String kind, Json.Obj body) {
        return site.journal
                .append(List.of(new Draft(Draft.randomId(site.home.chance()), ADA, kind, 1, body)))
                .get(0);
    }

    void decide(UUID result, Move move, PersonId by, String... batches) {
        deciding.decide(wish(result, move, Optional.empty(), batches), by, Optional.empty());
    }

    void decide(UUID result, Move move, String cause, PersonId by) {
        deciding.decide(wish(result, move, Optional.of(cause)), by, Optional.empty());
    }

    static Wish wish(UUID result, Move move, Optional<String> cause, String... batches) {
        return new Wish(result, move, List.of(batches), "as the plan says", cause);
    }

    /** Returns {@code ledger …} for a call. */
    Object command(Terminal terminal) {
        return command(terminal, List.of());
    }

    Object command(Terminal terminal, List<ReportPrinter> printers) {
        return new LedgerCommand(
                site.results,
                doors,
                new ResultExport(site.results, printers),
                terminal,
                new Print(terminal, site.journal, site.site, new PersonNames(List.of())),
                new ActsPrint(terminal, site.site, site.home.clock()));
    }

    Set<Role> roles(PersonId who) {
        return people.find(who).orElseThrow().roles();
    }

    /** An outside laboratory reports that it found allergen in the batch. */
    void reported(Instant at) {
        deciding.reported(
                new Outside(
                        "Harbour Laboratory",
                        "HL-17",
                        "F-1",
                        "hazelnut",
                        true,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(BATCH),
                        List.of(),
                        at),
                TESTER);
    }

    /** Somebody changes rows of the index behind the program, with a database tool. */
    void behindOurBack(String sql, int rows) {
        site.index.catchUp(Progress.NONE);
        site.index.close();
        try {
            DatabaseTool.change(site.home.folder(), sql, rows);
        } catch (IOException | SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    void release(PersonId by) {
        releasing.release(Subject.batch(BATCH), "all points are Negative", by, Optional.empty());
    }

    /** Returns the codes for which the batch may not go. */
    List<String> reasons() {
        return releasing.standing(Subject.batch(BATCH)).reasons().stream()
                .map(reason -> reason.code())
                .toList();
    }

    long entries() {
        return site.journal.size(site.journal.stations().get(0));
    }

    /** Returns the code with which an act is refused; nothing was recorded. */
    String refused(ThrowingCallable act) {
        long before = entries();
        Throwable thrown = org.assertj.core.api.Assertions.catchThrowable(act);
        org.assertj.core.api.Assertions.assertThat(thrown).isInstanceOf(Refusal.class);
        org.assertj.core.api.Assertions.assertThat(entries()).isEqualTo(before);
        return ((Refusal) thrown).code();
    }

    @Override
    public void close() {
        site.close();
    }
}
