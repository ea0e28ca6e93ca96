package wickbench.parts;

import java.util.Arrays;
import java.util.List;
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
                count(services, IndexView.class));
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
