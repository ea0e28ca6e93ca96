package wickbench.ledger.pack;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.attachment.Attachments;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Proofs;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Profile;
import wickbench.api.profile.SiteFacts;
import wickbench.api.profile.SiteProfile;
import wickbench.api.progress.Progress;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.WholeFolder;
import wickbench.ledger.Results;
import wickbench.ledger.papers.FilterText;
import wickbench.ledger.papers.PackMade;
import wickbench.ledger.papers.Packing;
import wickbench.ledger.papers.Papers;

/** Makes audit packs from journals, attachments and reports. */
@Component
public final class PackDesk implements Packing {
    private static final String PAGE = "verify-without-wickbench.md";
    private static final DateTimeFormatter MILLIS =
            new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

    private final Home home;
    private final Journal journal;
    private final Proofs proofs;
    private final Results results;
    private final Papers papers;
    private final SiteFacts site;
    private final List<Attachments> attachments;
    private final List<SiteProfile> profiles;
    private final List<ReportPrinter> printers;

    @Activate
    public PackDesk(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Proofs proofs,
            @Reference Results results,
            @Reference Papers papers,
            @Reference SiteFacts site,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<Attachments> attachments,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<SiteProfile> profiles,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers) {
        this.home = home;
        this.journal = journal;
        this.proofs = proofs;
        this.results = results;
        this.papers = papers;
        this.site = site;
        this.attachments = attachments;
        this.profiles = profiles;
        this.printers = printers;
    }

    @Override
    public Packed pack(Wanted wanted, PersonId by, Progress progress) {
        try {
            if (!new WholeFolder(wanted.folder()).isFree()) {
                throw new Refusal("pack.folder", PackWords.get("pack.folder", wanted.folder()));
            }
            refuseFalsified(progress);
            Search search = new Search(results, journal, progress);
            Set<EntryRef> chosen = wanted.everything()
                    ? everything(search)
                    : search.belonging(wanted.filter()).entries();
            return new WholeFolder(wanted.folder()).write(beside -> fill(beside, wanted, chosen, by, progress));
        } catch (IOException e) {
            throw new BadInput(Complaint.of(
                    wanted.folder().toString(), PackWords.get("pack.unwritable", String.valueOf(e.getMessage()))));
        }
    }

    /** A pack is a proof, so it rests on nothing that is not as it was recorded. */
    private void refuseFalsified(Progress progress) {
        boolean[] stopped = {false};
        List<String> falsified = results.falsified((done, total) -> {
            stopped[0] |= !progress.at(done, total);
            return !stopped[0];
        });
        if (stopped[0]) {
            throw new Refusal("pack.stopped", PackWords.get("pack.stopped"));
        }
        if (!falsified.isEmpty()) {
            throw new Refusal("ledger.differs", String.join("\n", falsified));
        }
    }

    private static Set<EntryRef> everything(Search search) {
        Set<EntryRef> all = new java.util.LinkedHashSet<>();
        search.entries(entry -> all.add(entry.ref()));
        return all;
    }

    private Packed fill(Path beside, Wanted wanted, Set<EntryRef> chosen, PersonId by, Progress progress)
            throws IOException {
        PackFiles files = new PackFiles(beside);
        String of = wanted.everything() ? PackWords.get("pack.everything") : FilterText.of(wanted.filter());
        Proved proved = new Proved(journal, proofs, files);
        long[] done = {0};
        proved.write(chosen, ref -> {
            done[0]++;
            if (!progress.at(done[0], Math.max(done[0], chosen.size()))) {
                throw new Refusal("pack.stopped", PackWords.get("pack.stopped"));
            }
        });
        PackedFiles attached = new PackedFiles(attachments, files);
        attached.of(chosen);
        List<String> reports =
                wanted.everything() ? List.of() : new PackReports(papers, printers).add(files, wanted.filter());
        page(files);
        files.addText(
                "pack.json",
                contents(of, by, chosen.size(), proved, attached, reports).canonical() + "\n");
        Hash sums = files.list();
        PackMade made = new PackMade(of, chosen.size(), sums);
        Entry entry = journal.append(List.of(
                        new Draft(Draft.randomId(home.chance()), by, PackMade.KIND, PackMade.VERSION, made.body())))
                .get(0);
        files.seal(
                "seal.jsonl",
                proofs.prove(entry.ref(), OptionalLong.empty()).json().canonical() + "\n");
        return new Packed(
                entry.ref(), wanted.folder(), chosen.size(), attached.copied(), proved.seals(), attached.missing());
    }

    private static void page(PackFiles files) throws IOException {
        try (InputStream page = PackDesk.class.getResourceAsStream(PAGE)) {
            files.addText(PAGE, new String(page.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    private Json.Obj contents(
            String of, PersonId by, long entries, Proved proved, PackedFiles attached, List<String> reports) {
        return Json.object()
                .with("of", of)
                .with("made", MILLIS.format(home.clock().instant()))
                .with("by", by.value())
                .withText("plant", site.now().plant())
                .with(
                        "simulated",
                        journal.founding().filter(Founding::simulated).isPresent())
                .with("entries", entries)
                .with("stations", Json.array(proved.stations()))
                .with("attachments", Json.array(attached.list()))
                .with(
                        "missing",
                        Json.texts(attached.missing().stream().map(Hash::hex).toList()))
                .with("reports", Json.texts(reports))
                .with(
                        "kept",
                        Json.array(kept(Progress.NONE).stream().map(Kept::json).toList()));
    }

    @Override
    public List<Kept> kept(Progress progress) {
        int years = profiles.stream()
                .flatMap(port -> port.inForce(home.clock().instant()).stream())
                .map(Profile::retentionYears)
                .findFirst()
                .orElse(Profile.LEAST_RETENTION_YEARS);
        KeptRecords counted = new KeptRecords(years, site.now().zone());
        new Search(results, journal, progress).entries(counted::count);
        return counted.all();
    }
}
