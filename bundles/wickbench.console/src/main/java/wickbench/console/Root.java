package wickbench.console;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The program itself, as the command line sees it; called when no command is named. */
@Command(name = "wickbench")
final class Root implements Callable<Integer> {

    @Mixin
    private final GlobalOptions options = new GlobalOptions();

    private final Callable<Integer> withoutCommand;

    Root(Callable<Integer> withoutCommand) {
        this.withoutCommand = withoutCommand;
    }

    @Override
    public Integer call() throws Exception {
        return withoutCommand.call();
    }
}
