package wickbench.plant.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the bench hears of the places that are swabbed. */
class StatedSurfacesTest {
    @TempDir
    private Path folder;

    private PlantHome home;

    @BeforeEach
    void open() {
        home = new PlantHome(folder.resolve("home")).furnished();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void a_point_has_the_surface_that_was_stated_by_then_and_what_is_no_surface_has_none() {
        StatedSurfaces surfaces = new StatedSurfaces(home.book);
        Instant now = home.book.now();

        assertThat(surfaces.of("L2 kettle rim", now)).contains("stainless steel");
        assertThat(surfaces.of("L2 pump seal", now)).contains("rubber");
        assertThat(surfaces.of("L2 last rinse", now)).isEmpty();
        assertThat(surfaces.of("L2 first off", now)).isEmpty();
        assertThat(surfaces.of("nowhere", now)).isEmpty();
        assertThat(surfaces.of("L2 kettle rim", PlantHome.START.minusSeconds(1)))
                .isEmpty();
    }
}
