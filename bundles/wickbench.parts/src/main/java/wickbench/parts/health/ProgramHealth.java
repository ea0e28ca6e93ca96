package wickbench.parts.health;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.service.component.runtime.ServiceComponentRuntime;
import org.osgi.service.component.runtime.dto.ComponentConfigurationDTO;
import org.osgi.service.component.runtime.dto.ComponentDescriptionDTO;
import wickbench.api.part.Health;
import wickbench.api.part.Health.Of;
import wickbench.api.part.Health.State;
import wickbench.parts.kept.HomeSets;
import wickbench.parts.words.PartsWords;

/** Whether everything that is installed runs. */
final class ProgramHealth {
    private final BundleContext context;
    private final ServiceComponentRuntime components;
    private final HomeSets sets;

    ProgramHealth(BundleContext context, ServiceComponentRuntime components, HomeSets sets) {
        this.context = context;
        this.components = components;
        this.sets = sets;
    }

    Health bundles() {
        List<String> idle = Stream.of(context.getBundles())
                .filter(bundle -> !runs(bundle))
                .map(Bundle::getSymbolicName)
                .sorted()
                .toList();
        return idle.isEmpty()
                ? new Health(Of.BUNDLES, State.WELL, PartsWords.get("health.bundles", context.getBundles().length))
                : new Health(Of.BUNDLES, State.UNWELL, PartsWords.get("health.bundles.idle", String.join(", ", idle)));
    }

    /** What lacks a service is named with the service that it waits for. */
    Health services() {
        Map<String, String> waiting = new TreeMap<>();
        int ready = 0;
        for (ComponentDescriptionDTO component : components.getComponentDescriptionDTOs()) {
            for (ComponentConfigurationDTO each : components.getComponentConfigurationDTOs(component)) {
                if (each.unsatisfiedReferences.length > 0) {
                    waiting.put(component.name, lacking(component, each));
                } else {
                    ready++;
                }
            }
        }
        return waiting.isEmpty()
                ? new Health(Of.SERVICES, State.WELL, PartsWords.get("health.services", ready))
                : new Health(
                        Of.SERVICES,
                        State.UNWELL,
                        waiting.entrySet().stream()
                                .map(each -> PartsWords.get("health.services.waits", each.getKey(), each.getValue()))
                                .collect(Collectors.joining(" ")));
    }

    Health sets() {
        Map<String, String> troubles = sets.troubles();
        return troubles.isEmpty()
                ? new Health(
                        Of.SETS,
                        State.WELL,
                        PartsWords.get("health.sets", sets.running().all().size()))
                : new Health(
                        Of.SETS,
                        State.UNWELL,
                        troubles.entrySet().stream()
                                .map(each -> PartsWords.get("left-out", each.getKey(), each.getValue()))
                                .collect(Collectors.joining(" ")));
    }

    private static String lacking(ComponentDescriptionDTO component, ComponentConfigurationDTO configuration) {
        return Arrays.stream(configuration.unsatisfiedReferences)
                .flatMap(missing -> Arrays.stream(component.references)
                        .filter(asked -> asked.name.equals(missing.name))
                        .map(asked -> asked.interfaceName))
                .collect(Collectors.joining(", "));
    }

    private static boolean runs(Bundle bundle) {
        boolean fragment = (bundle.adapt(BundleRevision.class).getTypes() & BundleRevision.TYPE_FRAGMENT) != 0;
        return bundle.getState() == (fragment ? Bundle.RESOLVED : Bundle.ACTIVE);
    }
}
