package wickbench.parts.kept;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Version;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.feature.FeatureService;
import org.osgi.service.log.Logger;
import org.osgi.service.log.LoggerFactory;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.parts.archive.Makers;
import wickbench.parts.archive.SetArchive;
import wickbench.parts.plan.SetId;
import wickbench.parts.plan.SetReader;
import wickbench.parts.running.ArchiveSource;
import wickbench.parts.running.ProductSets;
import wickbench.parts.running.RunningSet;
import wickbench.parts.running.RunningSets;
import wickbench.parts.running.SetSource;
import wickbench.parts.words.PartsWords;

/**
 * The sets of one home: taken up as soon as the home is named, and put back as the launcher left them when it goes.
 *
 * <p>A set that does not come up at a start is told and left out; the program starts without it.
 */
@Component(service = HomeSets.class, immediate = true)
public final class KeptSets implements HomeSets {
    private static final String PRODUCT = "wickbench.product";
    private static final String FEATURES = "wickbench.features";

    private final BundleContext context;
    private final Logger log;
    private final KeptFolder folder;
    private final ProductSets product;
    private final SetReader reader;
    private final RunningSets running;
    private final Map<String, String> troubles = new LinkedHashMap<>();

    @Activate
    public KeptSets(
            BundleContext context,
            @Reference Home home,
            @Reference FeatureService features,
            @Reference(service = LoggerFactory.class) Logger log) {
        this.context = context;
        this.log = log;
        folder = new KeptFolder(home.folder());
        reader = new SetReader(features);
        product = new ProductSets(Path.of(context.getProperty(PRODUCT)), reader);
        running = new RunningSets(context, product, names(context.getProperty(FEATURES)));
        attempt(PartsWords.get("list"), this::takeUp);
    }

    @Deactivate
    public void close() {
        // a program that ends takes everything down by itself
        if (context.getBundle(0).getState() != Bundle.STOPPING) {
            running.reset();
        }
    }

    @Override
    public ProductSets product() {
        return product;
    }

    @Override
    public RunningSets running() {
        return running;
    }

    @Override
    public synchronized Map<String, String> troubles() {
        return new LinkedHashMap<>(troubles);
    }

    @Override
    public ArchiveSource read(Path archive) {
        ArchiveSource source = ArchiveSource.of(SetArchive.read(archive, Makers.of(product.folder())), reader);
        checkFloor(source.plan().id(), folder.list());
        return source;
    }

    @Override
    public synchronized void add(ArchiveSource source) {
        KeptArchive kept = new KeptArchive(source.plan().id(), source.archive().hash());
        change(source, () -> folder.put(kept, source.archive()), list -> list.with(kept));
    }

    @Override
    public synchronized void add(SetSource source) {
        SetId id = source.plan().id();
        checkFloor(id, folder.list());
        change(source, () -> {}, list -> list.withOfProduct(id, running.isOfStart(id.name())));
    }

    @Override
    public synchronized void remove(String name) {
        Optional<RunningSet> set = running.find(name);
        if (set.isEmpty() && troubles.containsKey(name)) {
            folder.put(forgotten(name, folder.list()));
        } else {
            SetSource source = running.down(name);
            try {
                folder.put(folder.list().removed(source.plan().id(), running.isOfStart(name)));
            } catch (UncheckedIOException notKept) {
                running.up(source);
                throw PartsWords.refusal("part.not-kept", name, notKept.getCause());
            }
        }
        troubles.remove(name);
    }

    private KeptList forgotten(String name, KeptList list) {
        SetId id = list.archive(name)
                .map(KeptArchive::id)
                .orElseGet(() -> new SetId(name, list.floor(name).orElse(Version.emptyVersion)));
        return list.removed(id, false);
    }

    private void change(SetSource source, Runnable store, UnaryOperator<KeptList> remember) {
        String name = source.plan().name();
        Optional<RunningSet> before = running.find(name);
        running.up(source);
        try {
            store.run();
            folder.put(remember.apply(folder.list()));
        } catch (UncheckedIOException notKept) {
            running.down(name);
            before.ifPresent(older -> running.up(older.source()));
            throw PartsWords.refusal("part.not-kept", name, notKept.getCause());
        }
        troubles.remove(name);
    }

    private void checkFloor(SetId id, KeptList list) {
        list.floor(id.name())
                .or(() -> running.find(id.name())
                        .map(set -> set.source().plan().id().version()))
                .filter(floor -> floor.compareTo(id.version()) > 0)
                .ifPresent(floor -> {
                    throw PartsWords.refusal("part.older", id, floor);
                });
    }

    private void takeUp() {
        KeptList list = folder.list();
        list.without().stream()
                .filter(name -> running.find(name).isPresent())
                .forEach(name -> attempt(name, () -> running.down(name)));
        list.ofProduct().stream()
                .filter(name -> running.find(name).isEmpty())
                .forEach(name -> attempt(name, () -> running.up(ofProduct(name))));
        list.archives().stream()
                .filter(this::isNewer)
                .forEach(kept -> attempt(kept.id().name(), () -> running.up(again(kept))));
    }

    private SetSource ofProduct(String name) {
        return Optional.ofNullable(product.all().get(name)).orElseThrow(() -> PartsWords.refusal("part.unknown", name));
    }

    /** A product that was renewed meanwhile may bring the same set, as new or newer. */
    private boolean isNewer(KeptArchive kept) {
        return running.find(kept.id().name())
                .map(set -> set.source().plan().id().version())
                .filter(version -> version.compareTo(kept.id().version()) >= 0)
                .isEmpty();
    }

    /** What lies in a home is judged again at each start: others may write there. */
    private ArchiveSource again(KeptArchive kept) {
        ArchiveSource source = read(folder.file(kept));
        if (!source.archive().hash().equals(kept.hash()) || !source.plan().id().equals(kept.id())) {
            throw PartsWords.refusal("part.exchanged", folder.file(kept), kept.id());
        }
        return source;
    }

    private void attempt(String name, Runnable work) {
        try {
            work.run();
        } catch (BadInput | Refusal | UncheckedIOException refused) {
            troubles.put(name, String.valueOf(refused.getMessage()));
            log.warn(PartsWords.get("left-out", name, refused.getMessage()));
        }
    }

    private static List<String> names(String commaSeparated) {
        return Arrays.stream(commaSeparated.split(",")).toList();
    }
}
