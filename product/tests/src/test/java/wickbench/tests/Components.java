package wickbench.tests;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.osgi.dto.DTO;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

/**
 * What the component runtime says of the components in a running framework.
 *
 * <p>The runtime's classes live inside the framework and not here, so its plain data objects are read by field name.
 */
final class Components {

    private static final String RUNTIME = "org.osgi.service.component.runtime.ServiceComponentRuntime";

    private final List<Component> all = new ArrayList<>();

    /** Asks the runtime of this framework. */
    static Components in(BundleContext framework) throws ReflectiveOperationException {
        ServiceReference<?> reference = framework.getServiceReference(RUNTIME);
        Object runtime = framework.getService(reference);
        var components = new Components();
        var descriptions = runtime.getClass().getMethod("getComponentDescriptionDTOs", Bundle[].class);
        for (Object description : (Collection<?>) descriptions.invoke(runtime, (Object) new Bundle[0])) {
            var configurations = runtime.getClass().getMethod("getComponentConfigurationDTOs", description.getClass());
            components.all.add(
                    Component.of((DTO) description, (Collection<?>) configurations.invoke(runtime, description)));
        }
        return components;
    }

    int count() {
        return all.size();
    }

    /** Components that lack a service, but for those that lack only what is awaited or what such a component would offer. */
    Map<String, Set<String>> unsatisfied(Set<String> awaited) {
        var lacking = new HashMap<Component, Set<String>>();
        all.stream()
                .filter(component -> !component.lacks().isEmpty())
                .forEach(component -> lacking.put(component, component.lacks()));
        var excused = new HashSet<>(awaited);
        boolean changed = true;
        while (changed) {
            changed = lacking.entrySet()
                    .removeIf(each -> excused.containsAll(each.getValue()) && excuse(each.getKey(), excused));
        }
        var names = new TreeMap<String, Set<String>>();
        lacking.forEach((component, lacks) -> names.put(component.name(), lacks));
        return names;
    }

    private static boolean excuse(Component component, Set<String> excused) {
        excused.addAll(component.offers());
        return true;
    }

    private record Component(String name, Set<String> offers, Set<String> lacks) {

        static Component of(DTO description, Collection<?> configurations) throws ReflectiveOperationException {
            Map<String, String> wanted = new HashMap<>();
            for (DTO reference : array(description, "references")) {
                wanted.put(text(reference, "name"), text(reference, "interfaceName"));
            }
            Set<String> lacks = new TreeSet<>();
            for (Object configuration : configurations) {
                for (DTO missing : array((DTO) configuration, "unsatisfiedReferences")) {
                    lacks.add(wanted.get(text(missing, "name")));
                }
            }
            return new Component(
                    text(description, "name"), Set.of((String[]) field(description, "serviceInterfaces")), lacks);
        }

        private static List<DTO> array(DTO from, String name) throws ReflectiveOperationException {
            return Stream.of((Object[]) field(from, name)).map(DTO.class::cast).toList();
        }

        private static String text(DTO from, String name) throws ReflectiveOperationException {
            return (String) field(from, name);
        }

        private static Object field(DTO from, String name) throws ReflectiveOperationException {
            return from.getClass().getField(name).get(from);
        }
    }
}
