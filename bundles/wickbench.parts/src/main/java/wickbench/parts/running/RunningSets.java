package wickbench.parts.running;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import wickbench.parts.plan.SetId;
import wickbench.parts.words.PartsWords;

/** The sets that run now, those that the launcher started among them. */
public final class RunningSets {
    /** What everything else stands on; it came with the program and goes with it. */
    public static final String GROUND = "base";

    private final BundleWork work;
    private final Map<String, RunningSet> atStart = new LinkedHashMap<>();
    private final Map<String, RunningSet> now = new LinkedHashMap<>();

    /**
     * Looks at what the launcher started.
     *
     * @param names the features that it was asked for
     */
    public RunningSets(BundleContext context, ProductSets product, List<String> names) {
        work = new BundleWork(context);
        product.closure(names).forEach((name, set) -> atStart.put(name, new RunningSet(set, work.present(set))));
        now.putAll(atStart);
    }

    public synchronized List<RunningSet> all() {
        return List.copyOf(now.values());
    }

    public synchronized Optional<RunningSet> find(String name) {
        return Optional.ofNullable(now.get(name));
    }

    /** Tells whether the launcher started this set. */
    public boolean isOfStart(String name) {
        return atStart.containsKey(name);
    }

    /** Sees whether a set would come up, and leaves no trace; nothing of it is started. */
    public synchronized void tryOut(SetSource source) {
        checkFits(source);
        if (!now.containsKey(source.plan().name())) {
            work.remove(work.install(source));
        }
    }

    /**
     * Takes a set up, in place of an older one of its name.
     *
     * @throws wickbench.api.check.Refusal {@code part.…} with the reason; everything runs as before then
     */
    public synchronized void up(SetSource source) {
        checkFits(source);
        Optional<RunningSet> older = find(source.plan().name());
        older.ifPresent(this::takeDown);
        try {
            List<Bundle> bundles = work.install(source);
            work.start(source, bundles);
            now.put(source.plan().name(), new RunningSet(source, bundles));
        } catch (RuntimeException refused) {
            older.ifPresent(before -> bringUp(before.source()));
            throw refused;
        }
    }

    /**
     * Takes a set down.
     *
     * @return where it came from, for who wants it back
     * @throws wickbench.api.check.Refusal {@code part.…} with the reason; everything runs as before then
     */
    public synchronized SetSource down(String name) {
        RunningSet set = find(name).orElseThrow(() -> PartsWords.refusal("part.not-running", name));
        if (name.equals(GROUND)) {
            throw PartsWords.refusal("part.ground", name);
        }
        if (set.source().plan().isLanguage()) {
            throw PartsWords.refusal("part.language", name);
        }
        now.values().stream()
                .filter(other -> other.source().plan().requires().stream()
                        .anyMatch(id -> id.name().equals(name)))
                .findFirst()
                .ifPresent(other -> {
                    throw PartsWords.refusal(
                            "part.needed", name, other.source().plan().id());
                });
        takeDown(set);
        return set.source();
    }

    /** Puts everything back as the launcher left it. */
    public synchronized void reset() {
        List<RunningSet> newestFirst = new ArrayList<>(now.values());
        Collections.reverse(newestFirst);
        for (RunningSet set : newestFirst) {
            if (!set.equals(atStart.get(set.source().plan().name()))) {
                takeDown(set);
            }
        }
        List<RunningSet> missing = new ArrayList<>(atStart.values());
        missing.removeIf(set -> now.containsKey(set.source().plan().name()));
        missing.forEach(set -> {
            bringUp(set.source());
            atStart.put(set.source().plan().name(), now.get(set.source().plan().name()));
        });
    }

    private void bringUp(SetSource source) {
        List<Bundle> bundles = work.install(source);
        work.start(source, bundles);
        now.put(source.plan().name(), new RunningSet(source, bundles));
    }

    private void takeDown(RunningSet set) {
        work.leaning(set.bundles()).ifPresent(other -> {
            throw PartsWords.refusal("part.needed", set.source().plan().name(), other.getSymbolicName());
        });
        work.remove(set.bundles());
        now.remove(set.source().plan().name());
    }

    private void checkFits(SetSource source) {
        SetId id = source.plan().id();
        if (id.name().equals(GROUND)) {
            throw PartsWords.refusal("part.ground", id.name());
        }
        if (source.plan().isLanguage()) {
            // a bundle takes words in only as it is made ready, and nearly all of them run already
            throw PartsWords.refusal("part.language", id.name());
        }
        if (!source.plan().everywhere()) {
            throw PartsWords.refusal("part.one-system", id);
        }
        for (SetId required : source.plan().requires()) {
            SetId here = find(required.name())
                    .map(set -> set.source().plan().id())
                    .orElseThrow(() -> PartsWords.refusal("part.requires", id, required));
            if (!here.equals(required)) {
                throw PartsWords.refusal("part.requires-other", id, required, here.version());
            }
        }
        find(id.name()).map(set -> set.source().plan().id().version()).ifPresent(version -> {
            if (version.compareTo(id.version()) >= 0) {
                throw PartsWords.refusal("part.running", id, version);
            }
        });
    }
}
