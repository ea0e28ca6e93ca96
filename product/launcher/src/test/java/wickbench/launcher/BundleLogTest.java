package wickbench.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.osgi.service.log.Logger;

class BundleLogTest {

    @Test
    void an_error_is_told_in_one_line_with_its_root_cause() {
        var cause = new IllegalStateException("outer", new IllegalArgumentException("the real\nreason"));
        assertThat(told(logger -> logger.error("part {} of {}", "a", "b", cause)))
                .isEqualTo(
                        "wickbench: some.bundle: part a of b (java.lang.IllegalArgumentException: the real reason)\n");
    }

    @Test
    void what_is_no_complaint_is_dropped() {
        assertThat(told(logger -> {
                    logger.info("hello");
                    logger.debug("all is well");
                }))
                .isEmpty();
    }

    @Test
    void a_logger_knows_its_name_and_its_levels() {
        Logger logger = BundleLog.factory().getLogger("some.bundle");
        assertThat(logger.getName()).isEqualTo("some.bundle");
        assertThat(logger.isErrorEnabled()).isTrue();
        assertThat(logger.isDebugEnabled()).isFalse();
    }

    private static String told(Consumer<Logger> act) {
        PrintStream before = System.err;
        var bytes = new ByteArrayOutputStream();
        try (var err = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
            System.setErr(err);
            act.accept(BundleLog.factory().getLogger("some.bundle"));
        } finally {
            System.setErr(before);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
