package wickbench.parts.running;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.wiring.BundleRequirement;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.FrameworkWiring;
import wickbench.parts.words.PartsWords;

/** What bundles ask of others before they can be started, found out before anything of theirs runs. */
final class Wants {
    private static final Pattern WANTED = Pattern.compile("\\(osgi\\.(?:wiring\\.)?[a-z.]+=([^)]*)\\)");

    private final FrameworkWiring wiring;

    Wants(FrameworkWiring wiring) {
        this.wiring = wiring;
    }

    /** Returns in one line the first thing that nobody offers, not even one of these bundles; empty when all is offered. */
    Optional<String> unmet(List<Bundle> bundles) {
        return bundles.stream().flatMap(this::unmet).findFirst();
    }

    private Stream<String> unmet(Bundle bundle) {
        return bundle.adapt(BundleRevision.class).getDeclaredRequirements(null).stream()
                .filter(Wants::isAskedNow)
                .filter(asked -> wiring.findProviders(asked).isEmpty())
                .map(asked -> PartsWords.get("wants", bundle.getSymbolicName(), what(asked)));
    }

    /** Optional ones may stay open, and those of another time than resolving are for other readers. */
    private static boolean isAskedNow(BundleRequirement asked) {
        var directives = asked.getDirectives();
        return directives
                        .getOrDefault(Constants.EFFECTIVE_DIRECTIVE, Constants.EFFECTIVE_RESOLVE)
                        .equals(Constants.EFFECTIVE_RESOLVE)
                && !directives.getOrDefault(Constants.RESOLUTION_DIRECTIVE, "").equals(Constants.RESOLUTION_OPTIONAL)
                && !directives.getOrDefault(Constants.RESOLUTION_DIRECTIVE, "").equals("dynamic");
    }

    private static String what(BundleRequirement asked) {
        String filter = asked.getDirectives().getOrDefault(Constants.FILTER_DIRECTIVE, asked.getNamespace());
        Matcher wanted = WANTED.matcher(filter);
        return wanted.find() ? wanted.group(1) + " " + filter : filter;
    }
}
