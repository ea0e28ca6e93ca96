package wickbench.bench.owed;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.check.Refusal;
import wickbench.api.command.Terminal;
import wickbench.api.gate.Answer.Reason;
import wickbench.api.gate.Question;
import wickbench.api.json.Json;
import wickbench.api.reading.Clearance;
import wickbench.api.reading.Clearance.State;
import wickbench.api.reading.Finding;
import wickbench.api.reading.RunAdvice;
import wickbench.api.reading.Severity;
import wickbench.reading.Clearances;
import wickbench.reading.FindingWords;

/** Asks every gate whether a strip may be started, as the page does before a run. */
final class MayStart {
    private final RunAdvice advice;
    private final Terminal terminal;

    MayStart(RunAdvice advice, Terminal terminal) {
        this.advice = advice;
        this.terminal = terminal;
    }

    /**
     * Shows what each gate says.
     *
     * @throws Refusal {@code start.refused} with the reasons when one of them says no
     */
    void ask(Question question) {
        List<Clearance> gates = advice.gates(question);
        if (terminal.json()) {
            terminal.json(Json.array(gates.stream().map(MayStart::json).toList()));
        } else {
            terminal.table(header(), gates.stream().flatMap(MayStart::rows).toList());
        }
        List<Reason> against = gates.stream()
                .filter(gate -> gate.state() == State.REFUSED)
                .flatMap(gate -> gate.reasons().stream())
                .toList();
        if (!against.isEmpty()) {
            throw new Refusal(
                    "start.refused",
                    OwedWords.get(
                            "start.refused-because",
                            against.stream().map(MayStart::words).collect(Collectors.joining(" "))));
        }
    }

    private static List<String> header() {
        return Stream.of("start.gate", "start.state", "start.reason", "start.todo")
                .map(OwedWords::get)
                .toList();
    }

    private static Stream<List<String>> rows(Clearance gate) {
        String state = OwedWords.get("start." + gate.state().code());
        List<List<String>> rows = new ArrayList<>();
        gate.reasons()
                .forEach(reason -> rows.add(List.of(gate.neighbour(), state, words(reason), Clearances.toDo(reason))));
        return rows.isEmpty() ? Stream.of(List.of(gate.neighbour(), state, "", "")) : rows.stream();
    }

    private static String words(Reason reason) {
        return FindingWords.text(new Finding(reason.code(), Severity.CAUTION, reason.measured(), reason.asked()));
    }

    private static Json.Obj json(Clearance gate) {
        return Json.object()
                .with("gate", gate.neighbour())
                .with("state", gate.state().code())
                .with(
                        "reasons",
                        Json.array(gate.reasons().stream().map(MayStart::json).toList()));
    }

    private static Json json(Reason reason) {
        return Json.object()
                .with("rule", reason.code())
                .with("measured", reason.measured())
                .with("asked", reason.asked())
                .with("text", words(reason))
                .with("to_do", Clearances.toDo(reason));
    }
}
