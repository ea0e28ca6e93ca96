package wickbench.plant;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Actor;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesAsked;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.programme.Maintained;
import wickbench.plant.site.FloorPicture;
import wickbench.plant.site.Spot;

/**
 * Does what is done about the plant; never on the screen's thread.
 *
 * <p>Each throws {@link wickbench.api.check.BadInput} for what cannot be, {@link wickbench.api.check.Refusal} for what a rule forbids;
 * nothing was done then. Stating needs quality's role; what has happened is recorded whoever says so.
 */
@ProviderType
public interface PlantKeeping {

    /** Reads a plant from a JSON file; states nothing. */
    Stated read(Path file);

    /** States things, all or none; returns how many were not stated so already. */
    int state(Stated things, Actor by);

    void retire(Retired what, Actor by);

    /** A line was changed from one product to another. */
    void changed(ChangeMade change, Actor by);

    void maintained(Maintained done, Actor by);

    /** Answers for something missed; signed. */
    void excuse(String rule, Instant occasion, String reason, Actor by);

    /** Chooses the worst case of a series with its reasons; opens nothing. */
    Series choose(SeriesAsked asked);

    /** Opens a series of cleans by which one is shown to work. */
    void open(Series series, Actor by);

    void ran(SeriesRun run, Actor by);

    /** Stands behind a series that passed; signed. */
    void confirm(Confirmed confirmed, Actor by);

    /** Says that something a clean rests on has changed. */
    void lapse(Changed changed, Actor by);

    /** Takes a floor picture, PNG or JPEG; its size is known from its header and nothing is decoded. */
    FloorPicture picture(Path file, Actor by);

    /** Places a point on the picture, in its pixels from the left and the top. */
    Spot place(String point, BigDecimal x, BigDecimal y, Actor by);
}
