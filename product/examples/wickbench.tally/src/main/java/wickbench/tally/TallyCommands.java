package wickbench.tally;

import java.util.List;
import java.util.concurrent.Callable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.index.Index;
import wickbench.api.json.Json;

/** Brings {@code wickbench tally}. */
@Component(property = CommandSet.NAME + "=tally")
public final class TallyCommands implements CommandSet {
    private final Index index;

    @Activate
    public TallyCommands(@Reference Index index) {
        this.index = index;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Print(index, terminal);
    }

    /** One call; what it says of itself stands in {@code commands.properties}. */
    @Command(name = "tally")
    record Print(Index index, Terminal terminal) implements Callable<Integer> {

        @Override
        public Integer call() {
            List<Tally> all = Tally.all(index);
            if (terminal.json()) {
                terminal.json(Json.array(all.stream()
                        .map(each -> Json.object().with("kind", each.kind()).with("entries", each.entries()))
                        .toList()));
            } else {
                terminal.table(
                        List.of(TallyWords.get("column.kind"), TallyWords.get("column.entries")),
                        all.stream()
                                .map(each -> List.of(each.kind(), Long.toString(each.entries())))
                                .toList());
            }
            return 0;
        }
    }
}
