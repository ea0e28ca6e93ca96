package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.bench.BenchHome.WRITER;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.reading.MethodJson;
import wickbench.testing.Meets;

class MethodShelfTest {
    private static final MethodId NUT = new MethodId("nut-swab");

    @TempDir
    private Path folder;

    private BenchHome home;

    @BeforeEach
    void open() {
        home = new BenchHome(folder);
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    @Meets({"21 CFR 117.145(b), (c)", "ISO/IEC 17025 7.2.2"})
    void keeps_every_version_and_ends_the_one_before() throws InterruptedException {
        IssuedMethod first = home.shelf.issue(version(1), WRITER);
        Thread.sleep(5); // entries are timed to the millisecond
        IssuedMethod second = home.shelf.issue(version(2), WRITER);

        assertThat(home.shelf.versions(NUT))
                .extracting(issued -> issued.method().ref().version())
                .containsExactly(1, 2);
        assertThat(home.shelf.versions(NUT).get(0).until()).contains(second.from());
        assertThat(home.shelf.inForce(NUT, first.from())).contains(version(1));
        assertThat(home.shelf.inForce(NUT, second.from())).contains(version(2));
        assertThat(home.shelf.inForce(NUT, first.from().minusMillis(1))).isEmpty();
        assertThat(home.shelf.all()).hasSize(1);
        assertThat(first.signed()).isFalse();
    }

    @Test
    void asks_for_the_next_version() {
        assertThatThrownBy(() -> home.shelf.issue(version(2), WRITER))
                .isInstanceOf(Refusal.class)
                .hasMessage("the next version of nut-swab is 1, the file says 2");
        assertThat(home.entries()).isZero();
    }

    @Test
    void the_same_file_again_adds_nothing() {
        home.shelf.issue(version(1), WRITER);
        long before = home.entries();

        home.shelf.issue(version(1), WRITER);

        assertThat(home.entries()).isEqualTo(before);
    }

    @Test
    @Meets("ISO 22000 7.2, 7.5")
    void a_withdrawn_method_is_not_in_force_but_known() {
        home.shelf.issue(version(1), WRITER);
        home.shelf.withdraw(NUT, "the kit is no longer made", WRITER);

        IssuedMethod withdrawn = home.shelf.all().get(0);
        assertThat(withdrawn.until()).isPresent();
        assertThat(home.shelf.inForce(NUT, withdrawn.until().get())).isEmpty();
        assertThat(home.shelf.find(NUT, Optional.of(Instant.parse("2099-01-01T00:00:00Z"))))
                .contains(version(1));
        assertThatThrownBy(() -> home.shelf.withdraw(NUT, "again", WRITER)).isInstanceOf(Refusal.class);
    }

    @Test
    void finds_the_first_version_for_a_strip_older_than_all() {
        home.shelf.issue(version(1), WRITER);

        assertThat(home.shelf.find(NUT, Optional.of(Instant.EPOCH))).contains(version(1));
        assertThat(home.shelf.find(NUT, Optional.empty())).contains(version(1));
        assertThat(home.shelf.find(new MethodId("other"), Optional.empty())).isEmpty();
    }

    private static Method version(int version) {
        Json.Obj json = MethodJson.write(Sheets.method("nut-swab")).with("version", version);
        return MethodJson.read("version " + version, json).orRefuse();
    }
}
