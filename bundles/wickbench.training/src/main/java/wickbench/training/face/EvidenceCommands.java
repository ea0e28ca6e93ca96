package wickbench.training.face;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.method.Route;
import wickbench.api.words.Coded;
import wickbench.api.words.Decimals;
import wickbench.training.BenchLight;
import wickbench.training.Observation;
import wickbench.training.Questions;
import wickbench.training.Sight;
import wickbench.training.book.Said;
import wickbench.training.book.TrainingWords;

/** What speaks for a competence: sight, light, observed tests, questions. */
abstract class EvidenceCommands extends TrainingDesk {
    EvidenceCommands(Doors doors, InstantSource clock, Hands hands, Terminal terminal) {
        super(doors, clock, hands, terminal);
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
                                Decimals.of(each.lux()),
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
}
