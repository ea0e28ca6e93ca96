package wickbench.plant.book;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.attachment.Attachments;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Authority;
import wickbench.api.home.Home;
import wickbench.api.journal.Journal;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantKeeping;
import wickbench.plant.Retired;
import wickbench.plant.Stated;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesAsked;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.programme.Maintained;
import wickbench.plant.site.FloorPicture;
import wickbench.plant.site.Spot;

/** Does what is done about the plant, one act after another. */
@Component
public final class PlantDoing implements PlantKeeping {
    private final Stating stating;
    private final Happening happening;
    private final Proving proving;
    private final FloorKeeping floor;

    @Activate
    public PlantDoing(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Authority authority,
            @Reference PlantBook book,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Attachments> attachments) {
        Writing writing = new Writing(home, journal, authority, book);
        stating = new Stating(writing);
        happening = new Happening(writing);
        proving = new Proving(writing);
        floor = new FloorKeeping(writing, attachments);
    }

    @Override
    public Stated read(Path file) {
        return PlantFile.read(file);
    }

    @Override
    public synchronized int state(Stated things, Actor by) {
        return stating.state(things, by);
    }

    @Override
    public synchronized void retire(Retired what, Actor by) {
        stating.retire(what, by);
    }

    @Override
    public synchronized void changed(ChangeMade change, Actor by) {
        happening.changed(change, by);
    }

    @Override
    public synchronized void maintained(Maintained done, Actor by) {
        happening.maintained(done, by);
    }

    @Override
    public synchronized void excuse(String rule, Instant occasion, String reason, Actor by) {
        happening.excuse(rule, occasion, reason, by);
    }

    @Override
    public Series choose(SeriesAsked asked) {
        return proving.choose(asked);
    }

    @Override
    public synchronized void open(Series series, Actor by) {
        proving.open(series, by);
    }

    @Override
    public synchronized void ran(SeriesRun run, Actor by) {
        proving.ran(run, by);
    }

    @Override
    public synchronized void confirm(Confirmed confirmed, Actor by) {
        proving.confirm(confirmed, by);
    }

    @Override
    public synchronized void lapse(Changed changed, Actor by) {
        proving.lapse(changed, by);
    }

    @Override
    public synchronized FloorPicture picture(Path file, Actor by) {
        return floor.picture(file, by);
    }

    @Override
    public synchronized Spot place(String point, BigDecimal x, BigDecimal y, Actor by) {
        return floor.place(point, x, y, by);
    }
}
