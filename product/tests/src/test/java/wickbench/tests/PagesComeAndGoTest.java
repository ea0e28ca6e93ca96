package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

/** What the rail offers follows the bundles that run, though no page is made before somebody looks at it. */
class PagesComeAndGoTest {
    @TempDir
    Path temporary;

    @Test
    void a_page_goes_with_its_bundle_and_comes_again() throws Exception {
        try (StartedSet started = StartedSet.of(List.of("base", "ledger"), temporary)) {
            started.nameHome(temporary.resolve("home"));
            BundleContext context = started.host().context();
            Bundle ledger = started.bundle("wickbench.ledger.ui");
            assertThat(ids(context)).contains("journal", "ledger", "release");
            ledger.stop();
            assertThat(ids(context)).contains("journal").doesNotContain("ledger", "release");
            ledger.start();
            assertThat(ids(context)).contains("journal", "ledger", "release");
        }
    }

    /** The ids of the places in the rail. */
    static List<String> ids(BundleContext context) throws Exception {
        ServiceReference<?> places = context.getAllServiceReferences("wickbench.shell.Places", null)[0];
        Object rail = context.getService(places);
        List<String> ids = new ArrayList<>();
        for (Object place : (List<?>) call(rail, "all")) {
            ids.add((String) call(place, "id"));
        }
        return ids;
    }

    private static Object call(Object on, String name) throws ReflectiveOperationException {
        Method method = on.getClass().getDeclaredMethod(name);
        method.setAccessible(true);
        return method.invoke(on);
    }
}
