package wickbench.launcher;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.function.ToIntFunction;

/**
 * The entry of the program: {@code [--features A,B] ARGUMENTS}.
 *
 * <p>Exit code 2 when the program cannot start, with one line on standard error for each thing that is missing; 70 when the
 * application throws; else what it answers.
 */
public final class Main {

    private static final int CANNOT_START = 2;

    /** The program itself is broken (EX_SOFTWARE of sysexits.h). */
    private static final int BROKEN = 70;

    private Main() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        System.exit(run(CommandLine.parse(arguments, System.getProperty(CommandLine.PROPERTY))));
    }

    private static int run(CommandLine line) throws IOException, InterruptedException {
        var phases = Phases.whenTraced();
        try (Host host = Host.start(Product.of(home()), line.features(), CacheFolder.ofUser(), phases)) {
            Runtime.getRuntime().addShutdownHook(new Thread(host::closeQuietly, "stop"));
            phases.follow(host.context());
            ToIntFunction<String[]> application = host.application();
            phases.reached("application found");
            int answer = application.applyAsInt(line.rest());
            phases.reached("application returned");
            return answer;
        } catch (CannotStart reasons) {
            reasons.lines().forEach(reason -> System.err.println("wickbench: " + reason));
            return CANNOT_START;
        } catch (RuntimeException | Error broken) {
            Complaint.tell("broken", "the application failed", broken);
            return BROKEN;
        }
    }

    /** The product folder holds {@code lib/}, and {@code lib/} holds this jar. */
    private static Path home() {
        String told = System.getProperty("wickbench.product");
        if (told != null) {
            return Path.of(told);
        }
        URI jar = URI.create(
                Main.class.getProtectionDomain().getCodeSource().getLocation().toString());
        return Path.of(jar).getParent().getParent();
    }
}
