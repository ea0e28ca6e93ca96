package wickbench.parts.running;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.parts.plan.SetPlan;
import wickbench.parts.plan.SetReader;
import wickbench.parts.words.PartsWords;

/** The sets that the product folder holds, whether they run or not. */
public final class ProductSets {
    private static final String ENDING = ".json";

    private final Path folder;
    private final SetReader reader;

    public ProductSets(Path folder, SetReader reader) {
        this.folder = folder;
        this.reader = reader;
    }

    public Path folder() {
        return folder;
    }

    /** Returns those that bring bundles of their own, by name. */
    public Map<String, SetSource> all() {
        try (Stream<Path> files = Files.list(folder.resolve("features"))) {
            Map<String, SetSource> sets = new TreeMap<>();
            files.map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(ENDING))
                    .map(file -> file.substring(0, file.length() - ENDING.length()))
                    .forEach(name -> source(name)
                            .filter(set -> !set.plan().bundles().isEmpty())
                            .ifPresent(set -> sets.put(name, set)));
            return sets;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns these and all that they require, what is required first. */
    Map<String, ProductSource> closure(List<String> names) {
        Map<String, ProductSource> found = new LinkedHashMap<>();
        names.forEach(name -> add(name, found));
        found.values().removeIf(set -> set.plan().bundles().isEmpty());
        return found;
    }

    /** Returns a set as it would be packed: what it says of itself, and its jars by file name. */
    public Packed packed(String name) {
        ProductSource set = source(name).orElseThrow(() -> PartsWords.refusal("part.unknown", name));
        return Packed.of(set.plan(), bytes(file(name)), set::jarFile);
    }

    /** Returns a set that is no part of the product, as a build leaves it: the file of the feature and its jars beside it. */
    public Packed packed(Path feature) {
        byte[] json = bytes(feature);
        SetPlan plan = reader.read(feature.toString(), json);
        return Packed.of(plan, json, bundle -> feature.resolveSibling(bundle.file()));
    }

    private void add(String name, Map<String, ProductSource> found) {
        if (!found.containsKey(name)) {
            source(name).ifPresent(set -> {
                set.plan().requires().forEach(required -> add(required.name(), found));
                found.put(name, set);
            });
        }
    }

    private Optional<ProductSource> source(String name) {
        Path file = file(name);
        return Files.isRegularFile(file)
                ? Optional.of(new ProductSource(folder, reader.read(file.toString(), bytes(file))))
                : Optional.empty();
    }

    /** What names no plain file of that folder is no set. */
    private Path file(String name) {
        return folder.resolve("features").resolve(name.replaceAll("[^a-z0-9-]", "_") + ENDING);
    }

    static byte[] bytes(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(Complaint.of(file.toString(), PartsWords.get("file.none")));
        }
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
