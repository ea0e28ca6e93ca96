package wickbench.bench.ui;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.gate.Answer;
import wickbench.api.reading.DueControl;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunAdvice;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Times;
import wickbench.bench.run.RunStrip;
import wickbench.reading.FindingWords;

/**
 * What the neighbours say to starting these strips now.
 *
 * @param lines what is said, with the numbers of the strips it is said of
 */
record StartCheck(List<Line> lines) {
    StartCheck {
        lines = List.copyOf(lines);
    }

    /** How far a start may go, most severe first. */
    enum Word {
        REFUSED,
        NOT_CHECKED,
        CAUTION,
        CLEARED
    }

    /** One thing that is said. */
    record Line(Word word, String text, List<Integer> strips) {}

    boolean refused() {
        return lines.stream().anyMatch(line -> line.word() == Word.REFUSED);
    }

    /** Asks as of now; not on the UI thread. */
    static StartCheck ask(ReadingDoor door, RunAdvice advice, List<RunStrip> strips, Instant now) {
        List<DueControl> due =
                advice.controlsDue(strips.stream().map(RunStrip::unread).toList());
        List<Line> lines = new ArrayList<>(asked(door, strips, now));
        if (!due.isEmpty()) {
            List<Integer> all = strips.stream().map(RunStrip::number).toList();
            lines.add(new Line(Word.CAUTION, FlowWords.get("gate.controls", ControlStrips.words(due)), all));
        }
        lines.sort(Comparator.comparing(Line::word));
        return new StartCheck(lines);
    }

    private static List<Line> asked(ReadingDoor door, List<RunStrip> strips, Instant now) {
        List<RecordedReading> judged = door.judge(
                strips.stream().map(strip -> started(strip.unread(), now)).toList());
        Map<Line, List<Integer>> said = new LinkedHashMap<>();
        for (int i = 0; i < strips.size(); i++) {
            for (Line line : lines(judged.get(i))) {
                said.computeIfAbsent(line, first -> new ArrayList<>())
                        .add(strips.get(i).number());
            }
        }
        return said.entrySet().stream()
                .map(one -> new Line(one.getKey().word(), one.getKey().text(), one.getValue()))
                .toList();
    }

    private static List<Line> lines(RecordedReading judged) {
        List<Line> lines = new ArrayList<>();
        for (Answer answer : judged.answers()) {
            lines.addAll(lines(answer, judged.verdict().findings()));
        }
        judged.verdict().findings().stream()
                .filter(StartCheck::before)
                .forEach(finding -> lines.add(new Line(Word.CAUTION, FindingWords.text(finding), List.of())));
        return lines;
    }

    /** Tells whether a finding speaks of what is known before the start, and can still be put right. */
    private static boolean before(Finding finding) {
        // when the extract was made is not known yet, as a rule
        boolean old = finding.rule().equals("time.extract-old") && finding.severity() != Severity.CAUTION;
        return old
                || finding.rule().equals("sample.pre-check")
                || finding.rule().equals("sample.visibly-soiled");
    }

    private static List<Line> lines(Answer answer, List<Finding> findings) {
        if (answer instanceof Answer.Refused refused) {
            return refused.reasons().stream()
                    .map(reason -> refused(reason, findings))
                    .toList();
        }
        if (answer instanceof Answer.NotChecked absent) {
            return List.of(
                    absent.required()
                            ? new Line(Word.REFUSED, FlowWords.get("gate.required", absent.neighbour()), List.of())
                            : new Line(Word.NOT_CHECKED, FlowWords.get("gate.absent", absent.neighbour()), List.of()));
        }
        return List.of(new Line(Word.CLEARED, FlowWords.get("gate.cleared", answer.neighbour()), List.of()));
    }

    /** What an observer's reading makes good is a caution. */
    private static Line refused(Answer.Reason reason, List<Finding> findings) {
        Optional<Finding> found = findings.stream()
                .filter(one -> one.rule().equals(reason.code()))
                .findFirst();
        boolean observed =
                found.filter(one -> one.severity() == Severity.CAUTION).isPresent();
        String text = found.map(FindingWords::text)
                .orElseGet(() -> FlowWords.get("gate.reason", reason.code(), reason.measured(), reason.asked()));
        return new Line(observed ? Word.CAUTION : Word.REFUSED, text, List.of());
    }

    private static Reading started(Reading unread, Instant now) {
        Times known = unread.times();
        return new Reading(
                unread.sample(),
                unread.method(),
                unread.route(),
                unread.lot(),
                unread.operator(),
                unread.observer(),
                new Times(known.outOfFridge(), known.extracted(), known.shaken(), Optional.of(now), Optional.empty()),
                unread.strip(),
                unread.second(),
                unread.preChecks(),
                unread.origin());
    }
}
