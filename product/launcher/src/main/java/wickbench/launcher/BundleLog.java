package wickbench.launcher;

import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.Arrays;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.service.log.FormatterLogger;
import org.osgi.service.log.LoggerFactory;

/**
 * The log service of the program: errors and warnings of bundles become complaints, the rest is dropped.
 *
 * <p>The component runtime reports a part that does not come up through this service; without one it prints whole stack traces.
 */
final class BundleLog {

    /** What the framework has to offer to bundles, so that they and the launcher mean the same service. */
    static final String PACKAGE = "org.osgi.service.log;version=1.5.0";

    private static final Set<String> TOLD = Set.of("error", "warn", "audit");
    private static final Set<String> ASKED = Set.of("isErrorEnabled", "isWarnEnabled");

    private BundleLog() {}

    static void register(BundleContext context) {
        context.registerService(LoggerFactory.class, factory(), null);
    }

    /** All methods of a factory get a logger: for a bundle and a name, or for a name or a class alone. */
    static LoggerFactory factory() {
        return proxy(LoggerFactory.class, (method, arguments) -> logger(arguments[0]));
    }

    /** A formatter logger is a logger too, so that one kind serves all who ask. */
    private static FormatterLogger logger(Object owner) {
        String who = owner instanceof Bundle bundle ? bundle.getSymbolicName() : String.valueOf(owner);
        return proxy(FormatterLogger.class, (method, values) -> log(who, method, values));
    }

    private static Object log(String who, Method call, Object[] values) {
        if (TOLD.contains(call.getName()) && values[0] instanceof String format) {
            Object[] rest = afterFormat(values);
            Object last = rest.length == 0 ? null : rest[rest.length - 1];
            Complaint.tell(who, filled(format, rest), last instanceof Throwable cause ? cause : null);
        }
        if (call.getReturnType() == boolean.class) {
            return ASKED.contains(call.getName());
        }
        return call.getName().equals("getName") ? who : null;
    }

    /** The arguments after the format, whether given one by one or as an array. */
    private static Object[] afterFormat(Object[] values) {
        return Arrays.stream(values)
                .skip(1)
                .flatMap(each ->
                        each instanceof Object[] many ? Arrays.stream(many) : Arrays.stream(new Object[] {each}))
                .toArray();
    }

    private static String filled(String format, Object[] rest) {
        String text = format;
        for (Object value : rest) {
            text = text.replaceFirst("\\{}", Matcher.quoteReplacement(String.valueOf(value)));
        }
        return text;
    }

    private static <T> T proxy(Class<T> type, BiFunction<Method, Object[], Object> answer) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(), new Class<?>[] {type}, (self, method, arguments) -> switch (method.getName()) {
                    case "hashCode" -> System.identityHashCode(self);
                    case "equals" -> self == arguments[0];
                    case "toString" -> type.getSimpleName();
                    default -> answer.apply(method, arguments);
                }));
    }
}
