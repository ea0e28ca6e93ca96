package wickbench.api.command;

import org.osgi.annotation.versioning.ConsumerType;

/**
 * Commands that a bundle brings to the command line.
 *
 * <p>Contributed as a service with the property {@code wickbench.command} naming the command ({@value #NAME}), so that it is
 * known without being made.
 */
@ConsumerType
@FunctionalInterface
public interface CommandSet {
    String NAME = "wickbench.command";

    /**
     * Service property of a command that only a program of its own can do, because it needs the main thread or changes the home
     * itself; where another program holds the home it is refused and never passed on.
     */
    String ALONE = "wickbench.command.alone";

    /**
     * Makes the command anew for one call.
     *
     * @param terminal where it prints and who asks
     * @return an object with picocli annotations; its methods return the exit code: 0 done, 1 checked and found wanting. Wrong
     *     input and refusals are thrown as {@link wickbench.api.check.BadInput} and {@link wickbench.api.check.Refusal}
     */
    Object commands(Terminal terminal);
}
