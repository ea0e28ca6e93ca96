package wickbench.stock.room;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.attachment.Attachments;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.progress.Progress;
import wickbench.api.words.Decimals;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;
import wickbench.stock.Fridges;
import wickbench.stock.Kit;
import wickbench.stock.LogShape;
import wickbench.stock.Lot;
import wickbench.stock.log.Analysis;
import wickbench.stock.log.LogFile;
import wickbench.stock.log.Range;

/** Takes loggers' files in, and what they say of the lots inside. */
@Component
public final class FridgeService implements Fridges {
    private final Shelves shelves;
    private final Pen pen;
    private final Index index;
    private final LogCopy copy;

    @Activate
    public FridgeService(
            @Reference Shelves shelves,
            @Reference Pen pen,
            @Reference Index index,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Attachments> attachments) {
        this.shelves = shelves;
        this.pen = pen;
        this.index = index;
        copy = new LogCopy(attachments);
    }

    @Override
    public List<Fridge> all() {
        List<Lot> lots = shelves.lots(shelves.now());
        return shelves.read(List.<Fridge>of(), FridgeRows::all).stream()
                .map(fridge -> FridgeRows.with(fridge, fridge.until(), FridgeRows.inside(fridge.id(), lots)))
                .toList();
    }

    @Override
    public synchronized Fridge register(Fridge fridge, Actor by) {
        if (fridge.low().compareTo(fridge.high()) >= 0) {
            throw Said.wrong(
                    "fridge.range", Decimals.of(fridge.low()), Decimals.of(fridge.high()));
        }
        pen.write(Act.KEEP_STOCK, pen.draft(by, FridgeJson.REGISTERED, FridgeJson.registered(fridge)), by);
        return known(fridge.id());
    }

    private Fridge known(String id) {
        return all().stream()
                .filter(fridge -> fridge.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Said.wrong("fridge.unknown", id));
    }

    @Override
    public synchronized Imported read(Path file, String id, LogShape said, Progress progress, Actor by) {
        Fridge fridge = known(id);
        LogShape remembered = shelves.read(LogShape.UNSAID, events -> FridgeRows.shape(events, id));
        LogFile log = LogFile.open(file, said.or(remembered), shelves.zone());
        Json.Obj named = named(file, id);
        Draft draft = new Draft(
                Draft.contentId(FridgeJson.LOGGED, named), by.who(), FridgeJson.LOGGED, LotEventJson.VERSION, named);
        Range own = range(fridge);
        Analysis analysis = new Analysis(ranges(own));
        if (!log.read(analysis, progress)) {
            return new Imported(
                    Optional.empty(),
                    false,
                    false,
                    analysis.rows(),
                    Instant.EPOCH,
                    Instant.EPOCH,
                    List.of(),
                    List.of(),
                    Optional.empty());
        }
        analysis.end();
        if (analysis.rows() == 0) {
            throw Said.wrong("fridge.no-readings", file.getFileName());
        }
        Optional<EntryRef> before = index.find(draft.id());
        List<Excursion> found = withSilence(analysis.outside(own), fridge, analysis);
        Imported done = before.isPresent()
                ? imported(before, false, analysis, found, List.of())
                : keep(fridge, analysis, found, draft, new Remembered(remembered, said), by);
        return attached(file, done, by);
    }

    private Imported attached(Path file, Imported done, Actor by) {
        return new Imported(
                done.entry(),
                done.added(),
                done.complete(),
                done.rows(),
                done.from(),
                done.to(),
                done.found(),
                done.quarantined(),
                copy.attach(file, done.entry().orElseThrow(), by.who()));
    }

    /** What was known of the file's shape, and what was said now. */
    private record Remembered(LogShape earlier, LogShape said) {
        boolean changed() {
            return !said.or(earlier).equals(earlier);
        }
    }

    private Imported keep(
            Fridge fridge, Analysis analysis, List<Excursion> found, Draft named, Remembered shape, Actor by) {
        Draft logged = new Draft(
                named.id(),
                named.by(),
                named.kind(),
                named.v(),
                FridgeJson.logged(named.body(), log(analysis, found, analysis.leftOut(range(fridge)))));
        List<Draft> drafts = new ArrayList<>(List.of(logged));
        if (shape.changed()) {
            drafts.add(pen.draft(
                    by,
                    FridgeJson.MAPPED,
                    FridgeJson.mapped(fridge.id(), shape.said().or(shape.earlier()))));
        }
        List<LotEvent.Quarantined> held = new Judged(shelves, fridge.id(), logged.id())
                .of(kit -> withSilence(analysis.outside(range(kit.storage())), fridge, analysis));
        held.forEach(event -> drafts.add(pen.draft(by, event)));
        Entry first = pen.write(Act.KEEP_STOCK, drafts, by).get(0);
        return imported(Optional.of(first.ref()), true, analysis, found, lots(held));
    }

    private static List<LotId> lots(List<LotEvent.Quarantined> held) {
        return held.stream().map(LotEvent.Quarantined::lot).distinct().toList();
    }

    private static Imported imported(
            Optional<EntryRef> entry, boolean added, Analysis analysis, List<Excursion> found, List<LotId> lots) {
        return new Imported(
                entry, added, true, analysis.rows(), analysis.from(), analysis.to(), found, lots, Optional.empty());
    }

    /** Adds the time between the last reading known so far and this file's first, where nobody looked. */
    private static List<Excursion> withSilence(List<Excursion> found, Fridge fridge, Analysis analysis) {
        List<Excursion> all = new ArrayList<>();
        fridge.until()
                .filter(until -> until.plusSeconds(3 * analysis.usualSeconds()).isBefore(analysis.from()))
                .ifPresent(until -> all.add(new Excursion(Cause.GAP, until, analysis.from(), 0, 0)));
        all.addAll(found);
        return all;
    }

    private static FridgeJson.Log log(Analysis analysis, List<Excursion> found, long leftOut) {
        var warmth = analysis.sketch().stretches();
        double low = warmth.stream().mapToDouble(each -> each.low()).min().orElseThrow();
        double high = warmth.stream().mapToDouble(each -> each.high()).max().orElseThrow();
        return new FridgeJson.Log(
                analysis.from(),
                analysis.to(),
                FridgeJson.rounded(low),
                FridgeJson.rounded(high),
                analysis.rows(),
                found,
                leftOut,
                analysis.spells(),
                analysis.sketch().widthSeconds(),
                warmth);
    }

    private Set<Range> ranges(Range own) {
        Set<Range> ranges = new LinkedHashSet<>(Set.of(own));
        shelves.read(new KitBook(List.of()), Events::kits).newest().stream()
                .map(Kit::storage)
                .map(FridgeService::range)
                .forEach(ranges::add);
        return ranges;
    }

    private static Range range(Fridge fridge) {
        return new Range(fridge.low().doubleValue(), fridge.high().doubleValue());
    }

    private static Range range(Kit.Storage storage) {
        return new Range(storage.low().doubleValue(), storage.high().doubleValue());
    }

    private static Json.Obj named(Path file, String fridge) {
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), MessageDigest.getInstance("SHA-256"))) {
            long bytes = in.transferTo(java.io.OutputStream.nullOutputStream());
            Hash hash = Hash.of(((DigestInputStream) in).getMessageDigest().digest());
            return Json.object()
                    .with("fridge", fridge)
                    .with(
                            "file",
                            wickbench.api.attachment.FileName.of(
                                            file.getFileName().toString())
                                    .value())
                    .with("sha256", hash.hex())
                    .with("bytes", bytes);
        } catch (IOException e) {
            throw Said.wrong("fridge.unreadable", file.getFileName(), e.getMessage());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    @Override
    public synchronized Imported measured(
            String id, Instant from, Instant to, BigDecimal low, BigDecimal high, Actor by) {
        Fridge fridge = known(id);
        if (!from.isBefore(to) || to.isAfter(shelves.now()) || low.compareTo(high) > 0) {
            throw Said.wrong("fridge.measured", from, to, Decimals.of(low), Decimals.of(high));
        }
        Measured said = new Measured(from, to, low.doubleValue(), high.doubleValue());
        List<Excursion> found = said.outside(range(fridge));
        FridgeJson.Log log = new FridgeJson.Log(from, to, low, high, 0, found, 0, List.of(), 1, List.of());
        Draft draft = pen.draft(by, FridgeJson.MEASURED, FridgeJson.measured(id, log));
        List<LotEvent.Quarantined> held =
                new Judged(shelves, id, draft.id()).of(kit -> said.outside(range(kit.storage())));
        List<Draft> drafts = new ArrayList<>(List.of(draft));
        held.forEach(event -> drafts.add(pen.draft(by, event)));
        Entry entry = pen.write(Act.KEEP_STOCK, drafts, by).get(0);
        return new Imported(Optional.of(entry.ref()), true, true, 0, from, to, found, lots(held), Optional.empty());
    }

    @Override
    public FridgeTrace trace(String id, Instant from, Instant to) {
        Fridge fridge = known(id);
        return Traces.of(fridge, shelves.read(List.of(), events -> FridgeRows.logs(events, id)), from, to);
    }
}
