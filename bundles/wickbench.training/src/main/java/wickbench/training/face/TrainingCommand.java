package wickbench.training.face;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.words.Coded;
import wickbench.training.BenchLight;
import wickbench.training.Competence;
import wickbench.training.Due;
import wickbench.training.Matrix;
import wickbench.training.Observation;
import wickbench.training.PersonRecord;
import wickbench.training.Questions;
import wickbench.training.Round;
import wickbench.training.Sight;
import wickbench.training.Terms;
import wickbench.training.book.Said;
import wickbench.training.book.TrainingWords;

/** {@code training}: who may test, and everything that speaks for it. */
@Command(name = "training", synopsisSubcommandLabel = "COMMAND")
final class TrainingCommand {
    private final Doors doors;
    private final InstantSource clock;
    private final Hands hands;
    private final List<ReportPrinter> printers;
    private final Terminal terminal;

    TrainingCommand(Doors doors, InstantSource clock, Hands hands, List<ReportPrinter> printers, Terminal terminal) {
        this.doors = doors;
        this.clock = clock;
        this.hands = hands;
        this.printers = printers;
        this.terminal = terminal;
    }

    @Command(name = "matrix")
    int matrix(
            @Option(names = "--at", paramLabel = "TIME") String at,
            @Option(names = "--out", paramLabel = "FILE") Path out) {
        Matrix matrix = doors.book().matrix(time("--at", at));
        if (out != null) {
            return printed(out, reports().matrix(matrix));
        }
        if (terminal.json()) {
            terminal.json(TrainingJson.matrix(matrix));
        } else if (matrix.people().isEmpty() || matrix.methods().isEmpty()) {
            terminal.line(TrainingWords.get("matrix.none"));
        } else {
            terminal.table(Print.matrixHeader(matrix), Print.matrixRows(matrix));
            terminal.line(TrainingWords.get("caution"));
        }
        return 0;
    }

    @Command(name = "person")
    int person(@Parameters(paramLabel = "ID") String id, @Option(names = "--out", paramLabel = "FILE") Path out) {
        PersonRecord record = doors.book().person(known(id), now());
        if (out != null) {
            return printed(out, reports().person(record, names()));
        }
        if (terminal.json()) {
            terminal.json(TrainingJson.person(record));
            return 0;
        }
        terminal.table(
                Print.competenceHeader(),
                record.competences().stream().map(Print::competenceRow).toList());
        Print print = new Print(doors.book().zone());
        terminal.table(
                Print.happeningHeader(),
                record.happenings().stream().map(print::happeningRow).toList());
        return 0;
    }

    @Command(name = "certificate")
    int certificate(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--out", required = true, paramLabel = "FILE.pdf") Path out) {
        PersonRecord record = doors.book().person(known(id), now());
        if (record.competences().stream().noneMatch(each -> each.state().mayTest())) {
            throw Said.refused("certificate.none", id);
        }
        return printed(out, reports().certificate(record, names(), now()));
    }

    @Command(name = "due")
    int due() {
        List<Due> due = doors.book().due(now());
        if (terminal.json()) {
            terminal.json(Json.array(due.stream().map(TrainingJson::due).toList()));
        } else if (due.isEmpty()) {
            terminal.line(TrainingWords.get("due.none"));
        } else {
            terminal.table(Print.dueHeader(), due.stream().map(Print::dueRow).toList());
        }
        return 0;
    }

    @Command(name = "authorise")
    int authorise(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--method", required = true, paramLabel = "METHOD") String method,
            @Option(names = "--until", paramLabel = "DATE") String until,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        return shown(doors.training().authorise(known(id), Typed.method(method), day(until), reason, hands.signer()));
    }

    @Command(name = "restore")
    int restore(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--method", required = true, paramLabel = "METHOD") String method,
            @Option(names = "--until", paramLabel = "DATE") String until,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        return shown(doors.training().restore(known(id), Typed.method(method), day(until), reason, hands.signer()));
    }

    @Command(name = "suspend")
    int suspend(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--method", paramLabel = "METHOD") String method,
            @Option(names = "--since", paramLabel = "TIME") String since,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        PersonId person = known(id);
        Optional<MethodId> of = Optional.ofNullable(method).map(Typed::method);
        Optional<Instant> from = Optional.ofNullable(since).map(text -> time("--since", text));
        doors.training().suspend(person, of, from, reason, hands.signer());
        terminal.note(TrainingWords.get("suspend.touched"));
        return shown(doors.book().person(person, now()).competences());
    }

    @Command(name = "acknowledge")
    int acknowledge(@Parameters(paramLabel = "METHOD") String method) {
        return shown(doors.training().acknowledge(Typed.method(method), hands.signer()));
    }

    @Command(name = "terms")
    int terms(
            @Option(names = "--months", paramLabel = "N") Integer months,
            @Option(names = "--untested-weeks", paramLabel = "N") Integer weeks,
            @Option(names = "--remind-days", paramLabel = "N") Integer days) {
        Terms before = doors.book().terms(now());
        boolean changes = months != null || weeks != null || days != null;
        Terms held = changes ? doors.training().terms(changed(before, months, weeks, days), hands.actor()) : before;
        if (terminal.json()) {
            terminal.json(TrainingJson.terms(held));
        } else {
            terminal.line(TrainingWords.get("terms.shown", held.months(), held.untestedWeeks(), held.remindDays()));
        }
        return 0;
    }

    private static Terms changed(Terms before, Integer months, Integer weeks, Integer days) {
        return Typed.of(
                "terms",
                "",
                none -> new Terms(
                        months == null ? before.months() : months,
                        weeks == null ? before.untestedWeeks() : weeks,
                        days == null ? before.remindDays() : days));
    }

    @Command(name = "sight")
    int sight(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--vision", required = true, paramLabel = "VISION") String vision,
            @Option(names = "--how", required = true, paramLabel = "TEXT") String how,
            @Option(names = "--at", paramLabel = "TIME") String at) {
        Sight sight = doors.training()
                .sight(
                        new Sight(
                                known(id),
                                time("--at", at),
                                Typed.of("--vision", vision, code -> Coded.of(Sight.Vision.class, code)),
                                how),
                        hands.actor());
        if (terminal.json()) {
            terminal.json(TrainingJson.sight(sight));
        } else {
            terminal.line(TrainingWords.get(
                    "sight.kept",
                    id,
                    TrainingWords.get("vision." + sight.vision().code())));
        }
        return 0;
    }

    @Command(name = "light")
    int light(
            @Parameters(paramLabel = "BENCH", arity = "0..1") String bench,
            @Option(names = "--lux", paramLabel = "LUX") BigDecimal lux,
            @Option(names = "--at", paramLabel = "TIME") String at) {
        if (bench != null) {
            if (lux == null) {
                throw Said.wrong("--lux", "lux.expected", "");
            }
            doors.training().light(new BenchLight(bench, time("--at", at), lux), hands.actor());
        }
        List<BenchLight> lights = doors.book().lights();
        if (terminal.json()) {
            terminal.json(Json.array(lights.stream().map(TrainingJson::light).toList()));
            return 0;
        }
        Print print = new Print(doors.book().zone());
        terminal.table(
                Print.columns("bench", "when", "lux", "light"),
                lights.stream()
                        .map(each -> List.of(
                                each.bench(),
                                print.time(each.at()),
                                each.lux().toPlainString(),
                                TrainingWords.get(each.dim() ? "light.dim" : "light.enough")))
                        .toList());
        return 0;
    }

    @Command(name = "observe")
    int observe(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--method", required = true, paramLabel = "METHOD") String method,
            @Option(names = "--route", required = true, paramLabel = "ROUTE") String route,
            @Option(names = "--sheet", required = true, paramLabel = "FILE.csv") Path sheet,
            @Option(names = "--at", paramLabel = "TIME") String at,
            @Option(names = "--remark", paramLabel = "TEXT", defaultValue = "") String remark) {
        Observation observation = new Observation(
                known(id),
                Typed.method(method),
                Typed.of("--route", route, code -> Coded.of(Route.class, code)),
                time("--at", at),
                StepSheet.read(sheet),
                remark);
        UUID entry = doors.training().observed(observation, hands.signer());
        told(entry, TrainingWords.get(observation.passed() ? "observed.passed" : "observed.failed", id, entry));
        return observation.passed() ? 0 : 1;
    }

    private void told(UUID entry, String sentence) {
        if (terminal.json()) {
            terminal.json(Json.object().with("entry", entry.toString()));
        } else {
            terminal.line(sentence);
        }
    }

    @Command(name = "questions")
    int questions(
            @Parameters(paramLabel = "FILE.csv", arity = "0..1") Path file,
            @Option(names = "--set", paramLabel = "NAME") String set,
            @Option(names = "--needed", paramLabel = "N") Integer needed) {
        if (file != null) {
            if (set == null) {
                throw Said.wrong("--set", "question.set-needed");
            }
            doors.training().issue(QuestionSheet.questions(set, file, Optional.ofNullable(needed)), hands.actor());
        }
        List<Questions> sets = doors.book().questions();
        terminal.table(
                Print.columns("set", "questions", "needed"),
                sets.stream()
                        .map(each -> List.of(
                                each.name(), String.valueOf(each.questions().size()), String.valueOf(each.needed())))
                        .toList());
        return 0;
    }

    @Command(name = "paper")
    int paper(
            @Parameters(paramLabel = "SET") String set,
            @Option(names = "--out", required = true, paramLabel = "FILE.csv") Path out) {
        QuestionSheet.write(doors.training().paper(set), out);
        terminal.note(TrainingWords.get("file.written", out));
        return 0;
    }

    @Command(name = "answer")
    int answer(
            @Parameters(paramLabel = "SET") String set,
            @Option(names = "--sheet", required = true, paramLabel = "FILE.csv") Path sheet) {
        QuestionSheet.Filled filled = QuestionSheet.filled(set, sheet);
        boolean passed = doors.training().answered(filled.paper(), filled.choices(), hands.actor());
        terminal.line(TrainingWords.get(passed ? "answered.passed" : "answered.failed", set));
        return passed ? 0 : 1;
    }

    @Command(name = "seen")
    int seen(@Parameters(paramLabel = "ENTRY|ROUND") String about) {
        UUID entry = doors.rounds()
                .find(about)
                .map(this::scoreOf)
                .orElseGet(() -> Typed.of("ENTRY", about, UUID::fromString));
        doors.training().countersign(entry, hands.signer());
        terminal.line(TrainingWords.get("seen.kept", entry));
        return 0;
    }

    private UUID scoreOf(Round round) {
        return round.scored().orElseThrow(() -> Said.refused("round.not-closed", round.id()));
    }

    private int shown(Competence competence) {
        return shown(List.of(competence));
    }

    private int shown(List<Competence> competences) {
        if (terminal.json()) {
            terminal.json(Json.array(
                    competences.stream().map(TrainingJson::competence).toList()));
        } else {
            terminal.table(
                    Print.competenceHeader(),
                    competences.stream().map(Print::competenceRow).toList());
        }
        return 0;
    }

    private int printed(Path out, Report report) {
        PrintedFile.write(out, printers, report);
        terminal.note(TrainingWords.get("file.written", out));
        return 0;
    }

    private Reports reports() {
        return new Reports(doors.book().zone());
    }

    private Names names() {
        return id -> doors.people().find(id).map(person -> person.display()).orElse(id.value());
    }

    /** A person who is enrolled, or anybody where nobody is yet. */
    private PersonId known(String id) {
        PersonId person = Typed.person("ID", id);
        if (!doors.people().all().isEmpty() && doors.people().find(person).isEmpty()) {
            throw Said.wrong("ID", "person.unknown", id);
        }
        return person;
    }

    private static Optional<LocalDate> day(String until) {
        return Optional.ofNullable(until).map(text -> Typed.date("--until", text));
    }

    private Instant now() {
        return clock.instant();
    }

    private Instant time(String field, String text) {
        return text == null ? now() : Typed.time(field, text, doors.book().zone());
    }
}
