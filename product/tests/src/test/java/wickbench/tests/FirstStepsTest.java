package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.ServiceReference;

/** What the bundles say a new desk needs, asked of a home where nothing was recorded and of the demonstration's. */
class FirstStepsTest {
    @TempDir
    Path temporary;

    @Test
    void nothing_is_done_where_nothing_was_recorded() throws Exception {
        try (StartedSet started = StartedSet.of(List.of("complete"), temporary)) {
            started.nameHome(temporary.resolve("home"));
            assertThat(steps(started))
                    .containsOnlyKeys(10, 20, 30, 40, 50, 52, 54, 60, 70, 80)
                    .allSatisfy((order, done) ->
                            assertThat(done).as("step %d", order).isFalse());
        }
    }

    @Test
    void all_but_the_back_up_is_done_in_the_demonstration() throws Exception {
        try (StartedProgram program = StartedProgram.of(List.of("complete"), temporary)) {
            DemoHome home = DemoHome.found(program, temporary.resolve("home"));
            program.set().nameHome(home.folder());
            assertThat(steps(program.set()))
                    .allSatisfy((order, done) ->
                            assertThat(done).as("step %d", order).isEqualTo(order != 70));
        }
    }

    @Test
    void a_smaller_desk_asks_for_less() throws Exception {
        try (StartedSet started = StartedSet.of(List.of("base", "stock"), temporary)) {
            started.nameHome(temporary.resolve("home"));
            assertThat(steps(started)).containsOnlyKeys(10, 20, 50, 52, 54, 70);
        }
    }

    /** Whether each step is done, by its order. */
    private static Map<Integer, Boolean> steps(StartedSet started) throws Exception {
        Map<Integer, Boolean> done = new TreeMap<>();
        for (Object step : all(started)) {
            done.put((Integer) call(step, "order"), (Boolean) call(step, "done"));
        }
        return done;
    }

    private static List<Object> all(StartedSet started) throws Exception {
        List<Object> steps = new ArrayList<>();
        for (ServiceReference<?> offer :
                started.host().context().getAllServiceReferences("wickbench.shell.FirstSteps", null)) {
            steps.addAll((List<?>) call(started.host().context().getService(offer), "steps"));
        }
        return steps;
    }

    private static Object call(Object on, String name) throws ReflectiveOperationException {
        Method method = on.getClass().getMethod(name);
        return method.invoke(on);
    }
}
