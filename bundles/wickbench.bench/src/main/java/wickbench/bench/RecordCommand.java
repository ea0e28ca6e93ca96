package wickbench.bench;

import java.util.List;
import java.util.concurrent.Callable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.ReadingDoor.Kept;

/** {@code record}: keeps a sheet, all or nothing; the same sheet again adds nothing and says so. */
@Component(property = CommandSet.NAME + "=record")
public final class RecordCommand implements CommandSet {
    private final ReadingDoor door;
    private final MethodShelf shelf;
    private final SheetDesk desk;

    @Activate
    public RecordCommand(@Reference ReadingDoor door, @Reference MethodShelf shelf, @Reference SheetDesk desk) {
        this.door = door;
        this.shelf = shelf;
        this.desk = desk;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Record(terminal);
    }

    @Command(name = "record")
    private final class Record implements Callable<Integer> {
        private final Terminal terminal;

        @Mixin
        private SheetOptions sheet = new SheetOptions();

        Record(Terminal terminal) {
            this.terminal = terminal;
        }

        @Override
        public Integer call() {
            List<Kept> kept = door.record(sheet.read(desk, shelf), terminal.actorOrRefuse());
            VerdictPrint.printKept(kept, terminal);
            return 0;
        }
    }
}
