package wickbench.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.reading.RecordedReading;

/** {@code judge}: what a sheet says, without recording it. */
@Component(property = CommandSet.NAME + "=judge")
public final class JudgeCommand implements CommandSet {
    private final Judging judging;
    private final MethodShelf shelf;
    private final SheetDesk desk;

    @Activate
    public JudgeCommand(
            @Reference Home home,
            @Reference Index index,
            @Reference SheetDesk desk,
            @Reference MethodShelf shelf,
            @Reference Neighbours neighbours) {
        this.judging = new Judging(neighbours, home.clock(), new ControlBook(home, index));
        this.shelf = shelf;
        this.desk = desk;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Judge(terminal);
    }

    @Command(name = "judge")
    private final class Judge implements Callable<Integer> {
        private final Terminal terminal;

        @Mixin
        private SheetOptions sheet = new SheetOptions();

        @Option(names = "--method", arity = "1..*", paramLabel = "FILE.json")
        private List<Path> files = List.of();

        Judge(Terminal terminal) {
            this.terminal = terminal;
        }

        @Override
        public Integer call() {
            MethodSource methods = Judging.ofFiles(SheetOptions.methods(files), shelf);
            List<RecordedReading> judged = judging.judge(sheet.read(desk, methods), methods, (method, start) -> true);
            VerdictPrint.print(judged, terminal);
            return 0;
        }
    }
}
