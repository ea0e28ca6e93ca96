package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.store.Ageing;
import wickbench.figures.store.Trace;
import wickbench.figures.store.Warmth;

/** {@code figures warmth}: the mean kinetic temperature of a store. */
@Command(name = "warmth")
final class WarmthCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "FILE")
    private Path file;

    @Option(names = "--heat", paramLabel = "KJ")
    private double heat = 83.144;

    @Option(names = "--gap", paramLabel = "HOURS")
    private Optional<Double> gap = Optional.empty();

    @Option(names = "--low", paramLabel = "C")
    private Optional<Double> low = Optional.empty();

    @Option(names = "--high", paramLabel = "C")
    private Optional<Double> high = Optional.empty();

    @Override
    public Integer call() {
        TraceFile trace = TraceFile.read(file);
        return figures.answer(trace.lines(), () -> answer(trace));
    }

    private Answer answer(TraceFile file) {
        Trace trace = file.trace(gap);
        Warmth warmth = Warmth.of(trace.spells(), new Ageing(heat));
        Answer answer = Answer.of()
                .with("kinetic", warmth.kinetic())
                .with("mean", warmth.mean())
                .with("lowest", warmth.lowest())
                .with("highest", warmth.highest())
                .with("hours", warmth.hours())
                .with("gaps", trace.gaps())
                .with("uncoveredHours", trace.uncovered())
                .with("longestGapHours", trace.longestGap());
        return told(outside(answer, trace), file, trace);
    }

    private Answer outside(Answer answer, Trace trace) {
        Answer colder = low.map(limit -> answer.with("hoursBelow", Warmth.hoursBelow(trace.spells(), limit)))
                .orElse(answer);
        return high.map(limit -> colder.with("hoursAbove", Warmth.hoursAbove(trace.spells(), limit)))
                .orElse(colder);
    }

    private static Answer told(Answer answer, TraceFile file, Trace trace) {
        Answer gaps = trace.gaps() == 0 ? answer : answer.saying("warmth.gaps", trace.gaps());
        Answer clock = file.withoutOffset() ? gaps.saying("warmth.no-offset") : gaps;
        return clock.saying("warmth.formula").saying("warmth.screening");
    }
}
