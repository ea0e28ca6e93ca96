package wickbench.parts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Authority;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Journal;
import wickbench.api.part.Brings;
import wickbench.api.part.PartSet;
import wickbench.api.part.Parts;
import wickbench.api.part.Standing;
import wickbench.api.progress.Progress;
import wickbench.parts.health.Holder;
import wickbench.parts.kept.HomeSets;
import wickbench.parts.plan.SetId;
import wickbench.parts.plan.SetPlan;
import wickbench.parts.running.ArchiveSource;
import wickbench.parts.running.RunningSet;
import wickbench.parts.running.SetSource;
import wickbench.parts.words.PartsWords;

/**
 * Adds and removes sets for people: asks whether they may, changes what runs, and puts it on record.
 *
 * <p>A home without records has nothing to put it beside; there the change alone is made. An attempt that a rule of this bundle refuses goes on
 * record too.
 */
@Component
public final class PartsDesk implements Parts {
    private static final String OURS = "part.";

    private final Home home;
    private final Journal journal;
    private final Index index;
    private final Authority authority;
    private final HomeSets kept;

    @Activate
    public PartsDesk(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Index index,
            @Reference Authority authority,
            @Reference HomeSets kept) {
        this.home = home;
        this.journal = journal;
        this.index = index;
        this.authority = authority;
        this.kept = kept;
    }

    @Override
    public List<PartSet> sets() {
        Holder.answers(home, journal);
        List<PartSet> sets = new ArrayList<>();
        kept.running().all().forEach(set -> sets.add(running(set)));
        kept.product().all().forEach((name, source) -> {
            if (kept.running().find(name).isEmpty()) {
                sets.add(described(source.plan(), Standing.AT_HAND, Brings.NOTHING, source.maker(), Optional.empty()));
            }
        });
        for (Map.Entry<String, String> trouble : kept.troubles().entrySet()) {
            sets.removeIf(set ->
                    set.name().equals(trouble.getKey()) && !set.standing().runs());
            sets.add(new PartSet(
                    trouble.getKey(),
                    "",
                    trouble.getKey(),
                    "",
                    List.of(),
                    Standing.REFUSED,
                    Brings.NOTHING,
                    Optional.empty(),
                    Optional.of(trouble.getValue())));
        }
        return sets;
    }

    @Override
    public PartSet look(Path archive) {
        Holder.answers(home, journal);
        ArchiveSource source = kept.read(archive);
        kept.running().tryOut(source);
        return described(source.plan(), Standing.AT_HAND, Brings.NOTHING, source.maker(), Optional.empty());
    }

    @Override
    public PartSet add(Path archive, Actor by, Progress progress) {
        journal.stations();
        try {
            ArchiveSource source = kept.read(archive);
            Optional<Draft> said = allowed(added(source.plan().id(), Optional.of(source), by), by);
            kept.add(source);
            return done(source, said, progress);
        } catch (Refusal refused) {
            tell(archive, refused, by);
            throw refused;
        }
    }

    @Override
    public PartSet add(String name, Actor by, Progress progress) {
        journal.stations();
        SetSource source = Optional.ofNullable(kept.product().all().get(name))
                .orElseThrow(() -> PartsWords.refusal("part.unknown", name));
        Optional<Draft> said = allowed(added(source.plan().id(), Optional.empty(), by), by);
        kept.add(source);
        return done(source, said, progress);
    }

    @Override
    public PartSet remove(String name, Actor by) {
        journal.stations();
        PartSet gone = sets().stream()
                .filter(set -> set.name().equals(name))
                .findFirst()
                .orElseThrow(() -> PartsWords.refusal("part.unknown", name));
        SetId id = new SetId(name, org.osgi.framework.Version.parseVersion(gone.version()));
        Optional<Draft> said = allowed(PartEntries.removed(id, by.who(), home.chance()), by);
        Optional<RunningSet> running = kept.running().find(name);
        kept.remove(name);
        try {
            said.ifPresent(draft -> journal.append(List.of(draft)));
        } catch (Refusal notRecorded) {
            running.ifPresent(set -> back(set.source()));
            throw notRecorded;
        }
        return gone;
    }

    private Draft added(SetId id, Optional<ArchiveSource> archive, Actor by) {
        return PartEntries.added(id, archive, by.who(), home.chance());
    }

    /** What is not on record did not happen: a set that was added goes again when the journal refuses. */
    private PartSet done(SetSource source, Optional<Draft> said, Progress progress) {
        String name = source.plan().name();
        try {
            said.ifPresent(draft -> journal.append(List.of(draft)));
        } catch (Refusal notRecorded) {
            kept.remove(name);
            throw notRecorded;
        }
        if (said.isPresent()) {
            index.catchUp(progress);
        }
        return running(kept.running().find(name).orElseThrow());
    }

    private void back(SetSource source) {
        if (source instanceof ArchiveSource archive) {
            kept.add(archive);
        } else {
            kept.add(source);
        }
    }

    /** Returns the entry as it may be appended; empty where nothing is on record yet. */
    private Optional<Draft> allowed(Draft draft, Actor by) {
        return journal.founding().map(founded -> authority.authorise(Act.CHANGE_PARTS, draft, by.passphrase()));
    }

    private void tell(Path archive, Refusal refused, Actor by) {
        if (refused.code().startsWith(OURS) && journal.founding().isPresent()) {
            String file = archive.getFileName().toString();
            journal.append(List.of(PartEntries.refused(file, refused.code(), by.who(), home.chance())));
        }
    }

    private PartSet running(RunningSet set) {
        Standing standing = set.source() instanceof ArchiveSource
                        || !kept.running().isOfStart(set.source().plan().name())
                ? Standing.ADDED
                : Standing.OF_PRODUCT;
        return described(
                set.source().plan(),
                standing,
                Offered.by(set.bundles()),
                set.source().maker(),
                Optional.empty());
    }

    private static PartSet described(
            SetPlan plan, Standing standing, Brings brings, Optional<String> maker, Optional<String> trouble) {
        return new PartSet(
                plan.name(),
                plan.id().version().toString(),
                plan.title(),
                plan.description(),
                plan.requires().stream().map(SetId::name).toList(),
                standing,
                brings,
                maker,
                trouble);
    }
}
