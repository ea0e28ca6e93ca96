package wickbench.console;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;
import wickbench.api.command.CommandSet;

/** The commands of the bundles that are installed and have what they need. */
final class InstalledCommands {
    private final BundleContext context;

    InstalledCommands(BundleContext context) {
        this.context = context;
    }

    /** Returns the names of all commands, in order. */
    List<String> names() {
        return references().stream().map(InstalledCommands::name).toList();
    }

    /** Makes the command of that name ready; nothing else is touched, so a start stays quick. */
    Optional<CommandSet> find(String name) {
        return references().stream()
                .filter(reference -> name(reference).equals(name))
                .findFirst()
                .map(context::getService);
    }

    /** Tells whether only a program of its own can do this command; an unknown one can be done by nobody else either. */
    boolean isAlone(String name) {
        return references().stream()
                .filter(reference -> name(reference).equals(name))
                .findFirst()
                .map(reference -> "true".equals(reference.getProperty(CommandSet.ALONE)))
                .orElse(true);
    }

    private List<ServiceReference<CommandSet>> references() {
        try {
            Collection<ServiceReference<CommandSet>> all =
                    context.getServiceReferences(CommandSet.class, "(" + CommandSet.NAME + "=*)");
            return all.stream()
                    .sorted(Comparator.comparing(InstalledCommands::name))
                    .toList();
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException("a filter of this class is wrong", e);
        }
    }

    private static String name(ServiceReference<CommandSet> reference) {
        return String.valueOf(reference.getProperty(CommandSet.NAME));
    }
}
