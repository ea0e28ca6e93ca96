package wickbench.plant.book;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.attachment.Attachments;
import wickbench.api.attachment.Attachments.Looked;
import wickbench.api.attachment.Picture;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantKeeping;
import wickbench.plant.PlantState;
import wickbench.plant.Retired;
import wickbench.plant.Stated;
import wickbench.plant.Thing;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.clean.Validation;
import wickbench.plant.clean.Validity.Move;
import wickbench.plant.programme.DueItem;
import wickbench.plant.programme.DueState;
import wickbench.plant.programme.Excused;
import wickbench.plant.programme.Maintained;
import wickbench.plant.site.FloorPicture;
import wickbench.plant.site.Spot;
import wickbench.plant.terms.PlantWords;

/** Does what is done about the plant, each act after a look at what it rests on. */
@Component
public final class PlantDoing implements PlantKeeping {
    /** So many digits place a point to a pixel on any picture that is taken. */
    private static final MathContext DIGITS = new MathContext(6);

    /** Of a picture that is shown as it is stored (CIPA DC-008, tag 0x0112). */
    private static final int UPRIGHT = 1;

    private final Home home;
    private final Journal journal;
    private final Authority authority;
    private final PlantBook book;
    private final Optional<Attachments> attachments;

    @Activate
    public PlantDoing(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Authority authority,
            @Reference PlantBook book,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Attachments> attachments) {
        this.home = home;
        this.journal = journal;
        this.authority = authority;
        this.book = book;
        this.attachments = attachments;
    }

    @Override
    public Stated read(Path file) {
        return PlantFile.read(file);
    }

    @Override
    public synchronized int state(Stated things, Actor by) {
        PlantState now = now();
        StatedCheck.of(things, now);
        List<Json> known = StatedCheck.bodies(now);
        List<Draft> drafts = new ArrayList<>();
        for (Stated.Said said : things.all()) {
            if (!known.contains(said.body())) {
                drafts.add(authority.authorise(Act.KEEP_PLANT, draft(said.kind(), said.body(), by), by.passphrase()));
            }
        }
        if (!drafts.isEmpty()) {
            journal.append(drafts);
        }
        return drafts.size();
    }

    @Override
    public synchronized void retire(Retired what, Actor by) {
        known(what.what(), what.id());
        write(Act.KEEP_PLANT, Retired.KIND, new Retired(what.what(), what.id(), Said.reason(what.reason())).body(), by);
    }

    @Override
    public synchronized void changed(ChangeMade change, Actor by) {
        known(Thing.LINE, change.line());
        known(Thing.PRODUCT, change.from());
        known(Thing.PRODUCT, change.to());
        past(change.at());
        tell(ChangeMade.KIND, change.body(), by);
    }

    @Override
    public synchronized void maintained(Maintained done, Actor by) {
        known(Thing.LINE, done.line());
        past(done.at());
        tell(Maintained.KIND, done.body(), by);
    }

    @Override
    public synchronized void excuse(String rule, Instant occasion, String reason, Actor by) {
        String key = rule + "@" + occasion;
        DueItem item = book.due(book.now()).stream()
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow(() -> Said.wrong("RULE@TIME", "due.unknown", key));
        if (item.state() != DueState.MISSED && item.state() != DueState.OVERDUE) {
            throw Said.refused(
                    "due.not-missed",
                    key,
                    PlantWords.get("due-state." + item.state().code()));
        }
        write(Act.EXCUSE_DUE, Excused.KIND, new Excused(rule, occasion, Said.reason(reason)).body(), by);
    }

    @Override
    public synchronized void open(Series series, Actor by) {
        move(series.clean(), Move.OPEN);
        known(Thing.PRODUCT, series.product());
        series.points().forEach(point -> known(Thing.POINT, point.place()));
        write(Act.KEEP_PLANT, Series.KIND, series.body(), by);
    }

    @Override
    public synchronized void ran(SeriesRun run, Actor by) {
        move(run.clean(), Move.PASS);
        past(run.at());
        tell(SeriesRun.KIND, run.body(), by);
    }

    @Override
    public synchronized void confirm(Confirmed confirmed, Actor by) {
        Validation clean = move(confirmed.clean(), Move.CONFIRM);
        if (!clean.ready()) {
            throw Said.refused("validation.not-ready", confirmed.clean(), clean.passes(), Series.PASSES);
        }
        if (!confirmed.until().isAfter(book.now().atZone(book.zone()).toLocalDate())) {
            throw Said.wrong("--until", "validation.until", confirmed.until());
        }
        write(Act.VALIDATE_CLEAN, Confirmed.KIND, confirmed.body(), by);
    }

    @Override
    public synchronized void lapse(Changed changed, Actor by) {
        move(changed.clean(), Move.CHANGE);
        write(Act.KEEP_PLANT, Changed.KIND, new Changed(changed.clean(), Said.reason(changed.reason())).body(), by);
    }

    private Validation move(String clean, Move move) {
        Validation found = now().clean(clean).orElseThrow(() -> Said.wrong("CLEAN", "clean.unknown", clean));
        if (found.state().after(move).isEmpty()) {
            throw Said.refused(
                    "validation.move",
                    clean,
                    PlantWords.get("validity." + found.state().code()),
                    PlantWords.get("move." + move.code()));
        }
        return found;
    }

    @Override
    public synchronized FloorPicture picture(Path file, Actor by) {
        Attachments shelf = attachments.orElseThrow(() -> Said.refused("picture.no-attachments"));
        String name = file.getFileName().toString();
        FloorPicture picture = look(shelf, file, name);
        Entry entry = write(Act.KEEP_PLANT, FloorPicture.KIND, picture.body(), by);
        try (InputStream content = Files.newInputStream(file)) {
            shelf.add(content, name, entry.ref(), by.who());
        } catch (IOException e) {
            throw Said.wrong(name, "matrix.unreadable", e.getMessage());
        }
        return picture;
    }

    private static FloorPicture look(Attachments shelf, Path file, String name) {
        try (InputStream content = Files.newInputStream(file)) {
            Looked looked = shelf.look(content, name);
            Picture found = looked.picture().orElseThrow(() -> Said.wrong(name, "picture.none"));
            if (found.unreadable().isPresent()) {
                throw Said.wrong(
                        name,
                        "picture.unfit." + found.unreadable().get().replace("picture.", ""),
                        found.width(),
                        found.height(),
                        Picture.MOST_PIXELS);
            }
            if (found.orientation() != UPRIGHT) {
                throw Said.wrong(name, "picture.unfit.turned");
            }
            return new FloorPicture(looked.content(), found.width(), found.height(), name);
        } catch (NoSuchFileException e) {
            throw Said.wrong(name, "matrix.absent");
        } catch (IOException e) {
            throw Said.wrong(name, "matrix.unreadable", e.getMessage());
        }
    }

    @Override
    public synchronized Spot place(String point, BigDecimal x, BigDecimal y, Actor by) {
        known(Thing.POINT, point);
        FloorPicture picture = now().picture().orElseThrow(() -> Said.wrong("POINT", "picture.missing"));
        Spot spot = new Spot(point, share("X", x, picture.width(), picture), share("Y", y, picture.height(), picture));
        write(Act.KEEP_PLANT, Spot.KIND, spot.body(), by);
        return spot;
    }

    private static BigDecimal share(String field, BigDecimal pixel, int of, FloorPicture picture) {
        if (pixel.signum() < 0 || pixel.compareTo(BigDecimal.valueOf(of)) >= 0) {
            throw Said.wrong(field, "picture.outside", pixel.toPlainString(), picture.width(), picture.height());
        }
        return pixel.divide(BigDecimal.valueOf(of), DIGITS);
    }

    private PlantState now() {
        return book.at(book.now());
    }

    private void known(Thing what, String id) {
        if (!now().has(what, id)) {
            throw Said.wrong(what.name(), what.code() + ".unknown", id);
        }
    }

    private void past(Instant at) {
        if (at.isAfter(book.now())) {
            throw Said.wrong("--at", "time.ahead", at);
        }
    }

    private Entry write(Act act, String kind, Json.Obj body, Actor by) {
        Draft draft = authority.authorise(act, draft(kind, body, by), by.passphrase());
        return journal.append(List.of(draft)).get(0);
    }

    /** What has happened is recorded, whoever says so. */
    private void tell(String kind, Json.Obj body, Actor by) {
        journal.append(List.of(draft(kind, body, by)));
    }

    private Draft draft(String kind, Json.Obj body, Actor by) {
        return new Draft(Draft.randomId(home.chance()), by.who(), kind, Kinds.VERSION, body);
    }
}
