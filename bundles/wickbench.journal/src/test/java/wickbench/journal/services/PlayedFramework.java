package wickbench.journal.services;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.ServiceRegistration;

/** The framework, as far as the journal asks it; the parts of the journal itself are real. */
final class PlayedFramework {
    private final List<String> asked = new ArrayList<>();
    private final Map<ServiceReference<?>, Object> services = new HashMap<>();

    /** Returns what the framework was told and asked. */
    List<String> asked() {
        return asked;
    }

    <S> void put(ServiceReference<S> reference, S service) {
        services.put(reference, service);
    }

    BundleContext context() {
        ServiceRegistration<?> registration = played(ServiceRegistration.class, (self, method, values) -> {
            asked.add(method.getName());
            return null;
        });
        return played(BundleContext.class, (self, method, values) -> {
            asked.add(method.getName());
            return switch (method.getName()) {
                case "getService" -> services.get(values[0]);
                case "ungetService" -> true;
                default -> registration;
            };
        });
    }

    static <S> ServiceReference<S> reference() {
        int[] key = {0};
        return played(ServiceReference.class, (self, method, values) -> switch (method.getName()) {
            case "hashCode" -> System.identityHashCode(key);
            case "equals" -> self == values[0];
            default -> null;
        });
    }

    @SuppressWarnings("unchecked")
    private static <T> T played(Class<?> type, InvocationHandler by) {
        return (T) Proxy.newProxyInstance(PlayedFramework.class.getClassLoader(), new Class<?>[] {type}, by);
    }
}
