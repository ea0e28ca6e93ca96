package wickbench.figures.commands;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.sampling.Particles;

/** {@code figures particles}: the chance that a portion holds a particle. */
@Command(name = "particles")
final class ParticlesCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Option(names = "--per-kg", required = true, paramLabel = "L")
    private double perKg;

    @Option(names = "--portion", required = true, paramLabel = "G")
    private double grams;

    @Option(names = "--clumping", paramLabel = "K")
    private Optional<Double> clumping = Optional.empty();

    @Override
    public Integer call() {
        return figures.answer(this::answer);
    }

    private Answer answer() {
        Particles particles = new Particles(perKg);
        double found = clumping.map(k -> particles.foundClumped(grams, k)).orElseGet(() -> particles.found(grams));
        return Answer.of()
                .with("chance", found)
                .with("expected", particles.expected(grams))
                .saying(clumping.isPresent() ? "particles.clumped" : "particles.poisson")
                .saying("samples.random");
    }
}
