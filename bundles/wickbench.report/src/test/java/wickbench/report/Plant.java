package wickbench.report;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import wickbench.api.authority.Act;
import wickbench.api.authority.Signature;
import wickbench.api.gate.Answer;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Site;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.api.reading.Visual;
import wickbench.journal.JournalFolder;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.Judgement;
import wickbench.reading.RecordedReadingJson;
import wickbench.reading.Surroundings;

/** An invented plant with a real journal in a folder. */
public final class Plant implements AutoCloseable {
    public static final PersonId RIVERA = new PersonId("rivera");
    public static final PersonId OKAFOR = new PersonId("okafor");
    private static final Instant START = Instant.parse("2026-03-31T06:05:00Z");

    public final HomeFolder home;
    public final JournalFolder journal;

    public Plant(Path folder, boolean simulated) {
        home = new HomeFolder(folder);
        OptionalLong seed = OptionalLong.empty();
        if (simulated) {
            home.simulate(4, START);
            seed = OptionalLong.of(4);
        }
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("bench-1"), ZoneId.of("Europe/Zurich"), seed));
    }

    public Entry record(RecordedReading recorded) {
        return append(RecordedReading.KIND, RecordedReadingJson.write(recorded));
    }

    public Entry correct(UUID first, String reason, RecordedReading now) {
        return append(CorrectedReading.KIND, CorrectedReadingJson.write(new CorrectedReading(first, reason, now)));
    }

    /** Corrects under Rivera's name. */
    public Entry correctSigned(UUID first, String reason, RecordedReading now) {
        Json.Obj body = CorrectedReadingJson.write(new CorrectedReading(first, reason, now));
        Draft draft = new Draft(Draft.randomId(home.chance()), RIVERA, CorrectedReading.KIND, 1, body);
        Json.Obj name =
                Signature.of(draft, RIVERA, START, Act.CORRECT_OWN_READING).json();
        return journal.append(List.of(
                        new Draft(draft.id(), RIVERA, draft.kind(), draft.v(), body.with(Signature.MEMBER, name))))
                .get(0);
    }

    public Entry append(String kind, Json.Obj body) {
        return journal.append(List.of(new Draft(Draft.randomId(home.chance()), RIVERA, kind, 1, body)))
                .get(0);
    }

    /** The site without a profile, but for its name. */
    public Site site() {
        Site plain = Site.of(Optional.empty(), journal.founding());
        return new Site(
                Optional.of("Marlow Oats, an invented plant"),
                plain.zone(),
                plain.units(),
                plain.reviewDays(),
                plain.outcomeOrder());
    }

    @Override
    public void close() {
        journal.close();
    }

    /** A reading judged by the rules of the house. */
    public static RecordedReading reading(String code, Seen test, Seen hook, int minutes) {
        Method method = method();
        Reading reading = new Reading(
                sample(code),
                method.ref().id(),
                Route.SWAB_WET,
                new LotId("HZ-4471"),
                RIVERA,
                Optional.empty(),
                times(minutes),
                strip(test, hook),
                Optional.of(new Reading.SecondReading(OKAFOR, strip(test, hook))),
                Map.of("pH", new BigDecimal("6.8")),
                new Reading.Origin.Sheet("morning.csv", 4));
        List<Answer> answers = List.of(
                new Answer.Cleared("stock", Map.of("label expiry", "2026-09-30", "strips left", "18")),
                new Answer.NotChecked("training"));
        return new RecordedReading(
                reading, method, answers, Judgement.judge(method, reading, Surroundings.of(answers)));
    }

    private static Sample sample(String code) {
        return new Sample(
                code,
                "Depositor, nozzle plate",
                Optional.of("Line 4"),
                Optional.of("Oat bar 26-090"),
                Optional.of(Reason.AFTER_CLEANING),
                Optional.of("after the long run"),
                Optional.of(Visual.CLEAN),
                Optional.of(new BigDecimal("100")),
                BigDecimal.ONE,
                Optional.empty());
    }

    private static Times times(int minutes) {
        return new Times(
                Optional.of(START.minusSeconds(1800)),
                Optional.of(START.minusSeconds(90)),
                Optional.of(Duration.ofSeconds(60)),
                Optional.of(START),
                Optional.of(START.plusSeconds(60L * minutes)));
    }

    public static Strip strip(Seen test, Seen hook) {
        return new Strip(
                Format.SANDWICH_HOOK, Map.of(LineRole.CONTROL, Seen.SEEN, LineRole.HOOK, hook, LineRole.TEST, test));
    }

    private static Method method() {
        return new Method(
                new MethodRef(new MethodId("hazelnut-swab"), 3),
                "Hazelnut on wet surfaces",
                "Invented hazelnut strip",
                Optional.empty(),
                new Method.Target(
                        "Hazelnut",
                        Method.Basis.TOTAL_PROTEIN,
                        List.of(),
                        List.of("hydrolysed protein", "refined oil")),
                Format.SANDWICH_HOOK,
                Map.of(LineRole.CONTROL, "C", LineRole.HOOK, "H", LineRole.TEST, "T"),
                Route.SWAB_WET,
                new Method.Limit(
                        Quantity.of("0.5", Unit.UG_PER_ML),
                        Method.Holds.IN_EXTRACT,
                        Optional.of(new BigDecimal("0.95"))),
                Optional.empty(),
                Optional.of(new BigDecimal("900")),
                Optional.empty(),
                new Method.Timing(
                        Duration.ofMinutes(5),
                        Duration.ofMinutes(2),
                        Optional.of(Duration.ofMinutes(20)),
                        Optional.of(Duration.ofSeconds(60)),
                        Optional.of(Duration.ofMinutes(30))),
                new Method.Amounts(Quantity.of("100", Unit.CM2), Optional.of(Quantity.of("2", Unit.ML))),
                Optional.of(new Method.Range(new BigDecimal("2"), new BigDecimal("8"), Unit.CELSIUS)),
                List.of(new Method.PreCheck("pH", new Method.Range(new BigDecimal("5"), new BigDecimal("9"), Unit.PH))),
                List.of(new Method.Step(
                        "Swab 10 cm × 10 cm in both directions.",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())),
                List.of("Residual sanitiser can hide allergen: neutralise before testing."));
    }
}
