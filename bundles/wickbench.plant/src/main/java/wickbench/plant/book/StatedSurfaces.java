package wickbench.plant.book;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.gate.Surfaces;
import wickbench.plant.PlantBook;
import wickbench.plant.site.Point;
import wickbench.plant.site.Surface;

/** Tells the bench what the sampling points of the plant are made of. */
@Component
public final class StatedSurfaces implements Surfaces {
    /** What is sampled there, but has nothing that could be cleaned. */
    private static final Set<Surface> NONE = Set.of(Surface.RINSE_WATER, Surface.PRODUCT, Surface.OTHER);

    private final PlantBook book;

    @Activate
    public StatedSurfaces(@Reference PlantBook book) {
        this.book = book;
    }

    @Override
    public Optional<String> of(String place, Instant at) {
        return book.at(at).points().stream()
                .filter(point -> point.name().equals(place))
                .map(Point::surface)
                .filter(surface -> !NONE.contains(surface))
                .map(surface -> surface.code().replace('-', ' '))
                .findFirst();
    }
}
