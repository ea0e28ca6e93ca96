package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The library that draws charts finds all it needs inside the framework, where each bundle sees only what it imports. */
class ChartInTheFrameworkTest {
    private static final String CHART = "wickbench.api.chart.";

    @TempDir
    Path temporary;

    @Test
    void a_chart_is_painted() throws Exception {
        try (StartedSet started = StartedSet.of(List.of("base"), temporary)) {
            Object picture = paint(started, chart(started));
            int[] pixels = (int[]) picture.getClass().getMethod("argb").invoke(picture);
            assertThat(pixels).hasSize(400 * 300);
            assertThat(Arrays.stream(pixels).distinct().count()).isGreaterThan(10);
        }
    }

    private static Object paint(StartedSet started, Object chart) throws ReflectiveOperationException {
        Class<?> look = started.port(CHART + "ChartLook");
        Object small = look.getConstructors()[0].newInstance(400, 300, 1.0, false, Optional.empty());
        Method paint = started.port(CHART + "ChartPainter").getMethod("paint", chart.getClass(), look);
        return paint.invoke(started.service(CHART + "ChartPainter"), chart, small);
    }

    private static Object chart(StartedSet started) throws ReflectiveOperationException {
        Method linear = started.port(CHART + "Axis").getMethod("linear", String.class, String.class);
        Object axis = linear.invoke(null, "dose", "mg/kg");
        Object bars = started.port(CHART + "Series$Mark").getField("BARS").get(null);
        Object series = started.port(CHART + "Series")
                .getConstructors()[0]
                .newInstance("lot", bars, new double[] {1, 2}, new double[] {3, 4});
        Object limit = started.port(CHART + "Chart$Limit").getConstructors()[0].newInstance("limit", 3.5);
        Class<?> kind = axis.getClass();
        return started.port(CHART + "Chart")
                .getConstructor(String.class, kind, kind, List.class, List.class)
                .newInstance("title", axis, axis, List.of(series), List.of(limit));
    }
}
