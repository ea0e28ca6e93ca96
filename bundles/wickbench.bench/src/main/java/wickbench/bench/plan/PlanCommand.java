package wickbench.bench.plan;

import java.util.List;
import java.util.concurrent.Callable;
import org.osgi.service.component.annotations.Component;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import wickbench.api.check.BadInput;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.words.Coded;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.PlanStrip;
import wickbench.reading.plan.RunPlanner;
import wickbench.reading.plan.WindowRule;

/** {@code plan}: when to start and when to read each strip. */
@Component(property = CommandSet.NAME + "=plan")
public final class PlanCommand implements CommandSet {

    @Override
    public Object commands(Terminal terminal) {
        return new Plan(terminal);
    }

    @Command(name = "plan")
    private static final class Plan implements Callable<Integer> {
        private final Terminal terminal;

        @Option(names = "--hands-on", required = true, paramLabel = "SECONDS", descriptionKey = "hands-on")
        private String handsOn;

        @Option(names = "--look", required = true, paramLabel = "SECONDS", descriptionKey = "look")
        private String look;

        @Option(names = "--strips", required = true, paramLabel = "8x300+60,4x600+60", descriptionKey = "strips")
        private String strips;

        @Option(names = "--window", paramLabel = "end|start|exact", descriptionKey = "window")
        private String window = WindowRule.END.code();

        Plan(Terminal terminal) {
            this.terminal = terminal;
        }

        @Override
        public Integer call() {
            List<PlanStrip> read = StripList.of(handsOn, look).read(strips);
            PlanRequest request = oneLine(PlanRequest.of("--strips", read, rule()));
            PlanPrint.print(RunPlanner.plan(request), terminal);
            return 0;
        }

        private WindowRule rule() {
            try {
                return Coded.of(WindowRule.class, window);
            } catch (IllegalArgumentException e) {
                throw new BadInput(Complaint.of("--window", e.getMessage()));
            }
        }

        /** Equal strips are wrong in the same way; one line says it. */
        private static PlanRequest oneLine(Checked<PlanRequest> checked) {
            checked.complaints().stream().findFirst().ifPresent(first -> {
                throw new BadInput(first);
            });
            return checked.orRefuse();
        }
    }
}
