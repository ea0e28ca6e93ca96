package wickbench.parts;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.ServiceReference;
import wickbench.api.command.CommandSet;
import wickbench.api.gate.Gate;
import wickbench.api.index.IndexView;
import wickbench.api.part.Brings;

/** What bundles offer, read off their services without making one. */
final class Offered {
    /** As the desktop names it, which may not be installed. */
    private static final String PAGE = "wickbench.page";

    private static final String WORDS = "OSGI-INF/l10n";
    private static final Pattern OTHER_LANGUAGE = Pattern.compile("_([a-z]{2,3})\\.properties$");

    private Offered() {}

    static Brings by(List<Bundle> bundles) {
        List<ServiceReference<?>> services = bundles.stream()
                .map(Bundle::getRegisteredServices)
                .filter(found -> found != null)
                .<ServiceReference<?>>flatMap(Arrays::stream)
                .toList();
        return new Brings(
                named(services, PAGE),
                named(services, CommandSet.NAME),
                count(services, Gate.class),
                count(services, IndexView.class),
                languages(bundles));
    }

    /** A fragment with words in a language keeps them in files that end in its code. */
    private static List<String> languages(List<Bundle> bundles) {
        return bundles.stream()
                .filter(bundle -> bundle.getHeaders("").get(Constants.FRAGMENT_HOST) != null)
                .map(bundle -> bundle.getEntryPaths(WORDS))
                .filter(found -> found != null)
                .flatMap(found -> Collections.list(found).stream())
                .map(OTHER_LANGUAGE::matcher)
                .filter(Matcher::find)
                .map(file -> file.group(1))
                .distinct()
                .sorted()
                .toList();
    }

    private static List<String> named(List<ServiceReference<?>> services, String property) {
        return services.stream()
                .map(service -> service.getProperty(property))
                .filter(name -> name != null)
                .map(Object::toString)
                .sorted()
                .toList();
    }

    private static int count(List<ServiceReference<?>> services, Class<?> port) {
        return (int) services.stream()
                .filter(service -> Stream.of((String[]) service.getProperty(Constants.OBJECTCLASS))
                        .anyMatch(port.getName()::equals))
                .count();
    }
}
