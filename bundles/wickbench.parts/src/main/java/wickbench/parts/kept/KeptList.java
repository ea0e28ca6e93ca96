package wickbench.parts.kept;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.osgi.framework.Version;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.parts.plan.SetId;

/**
 * What a home remembers: {@code parts/sets.json}, whose schema is {@code docs/formats/sets-1.schema.json}.
 *
 * @param archives added from archives, in the order in which they were
 * @param ofProduct added from the product, though the launcher does not start them
 * @param without removed, though the launcher starts them
 * @param newest the newest version of each set that ever was added here; no older one is taken
 */
record KeptList(List<KeptArchive> archives, List<String> ofProduct, List<String> without, Map<String, Version> newest) {
    private static final String VERSION = "v";

    KeptList {
        archives = List.copyOf(archives);
        ofProduct = List.copyOf(ofProduct);
        without = List.copyOf(without);
        newest = Map.copyOf(newest);
    }

    static KeptList none() {
        return new KeptList(List.of(), List.of(), List.of(), Map.of());
    }

    static Checked<KeptList> read(String source, Json.Obj object) {
        Fields fields = Fields.of(source, object);
        if (fields.whole(VERSION) != 1) {
            fields.complain(VERSION, "expected 1");
        }
        List<KeptArchive> archives = new ArrayList<>();
        for (Fields each : fields.children("archives")) {
            String name = each.text("name");
            String version = each.text("version");
            each.optional("sha256", hash -> KeptArchive.of(name, version, hash)).ifPresent(archives::add);
        }
        List<String> ofProduct = fields.texts("of_product");
        List<String> without = fields.texts("without");
        Map<String, Version> newest = new TreeMap<>();
        Fields floors = fields.child("newest");
        floors.names()
                .forEach(name ->
                        floors.optional(name, Version::parseVersion).ifPresent(version -> newest.put(name, version)));
        return fields.finish(() -> new KeptList(archives, ofProduct, without, newest));
    }

    Json.Obj json() {
        Json.Obj floors = Json.object();
        for (Map.Entry<String, Version> floor : new TreeMap<>(newest).entrySet()) {
            floors = floors.with(floor.getKey(), floor.getValue().toString());
        }
        return Json.object()
                .with(VERSION, 1)
                .with(
                        "archives",
                        Json.array(archives.stream()
                                .map(each -> Json.object()
                                        .with("name", each.id().name())
                                        .with("version", each.id().version().toString())
                                        .with("sha256", each.hash().toString()))
                                .toList()))
                .with("of_product", Json.texts(ofProduct))
                .with("without", Json.texts(without))
                .with("newest", floors);
    }

    Optional<KeptArchive> archive(String name) {
        return archives.stream().filter(each -> each.id().name().equals(name)).findFirst();
    }

    Optional<Version> floor(String name) {
        return Optional.ofNullable(newest.get(name));
    }

    /** Remembers a set out of an archive, in place of what was remembered of its name. */
    KeptList with(KeptArchive added) {
        KeptList plain = without(added.id().name());
        List<KeptArchive> more = new ArrayList<>(plain.archives);
        more.add(added);
        return new KeptList(more, plain.ofProduct, plain.without, plain.newest).since(added.id());
    }

    /** Remembers a set out of the product, which the launcher starts or does not. */
    KeptList withOfProduct(SetId added, boolean started) {
        KeptList plain = without(added.name());
        List<String> more = new ArrayList<>(plain.ofProduct);
        if (!started) {
            more.add(added.name());
        }
        return new KeptList(plain.archives, more, plain.without, plain.newest).since(added);
    }

    /** Remembers that a set is gone; how new it was stays known. */
    KeptList removed(SetId gone, boolean started) {
        KeptList plain = without(gone.name());
        List<String> more = new ArrayList<>(plain.without);
        if (started) {
            more.add(gone.name());
        }
        return new KeptList(plain.archives, plain.ofProduct, more, plain.newest).since(gone);
    }

    private KeptList without(String name) {
        return new KeptList(
                archives.stream().filter(each -> !each.id().name().equals(name)).toList(),
                ofProduct.stream().filter(each -> !each.equals(name)).toList(),
                without.stream().filter(each -> !each.equals(name)).toList(),
                newest);
    }

    private KeptList since(SetId seen) {
        Map<String, Version> floors = new TreeMap<>(newest);
        floors.merge(seen.name(), seen.version(), (a, b) -> a.compareTo(b) >= 0 ? a : b);
        return new KeptList(archives, ofProduct, without, floors);
    }
}
