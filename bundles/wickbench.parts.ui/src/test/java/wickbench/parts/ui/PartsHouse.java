package wickbench.parts.ui;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.apache.felix.framework.Felix;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.service.feature.FeatureService;
import org.osgi.service.log.Logger;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Entry;
import wickbench.api.part.Health;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.parts.PartsDesk;
import wickbench.parts.archive.MakerKey;
import wickbench.parts.archive.SetPacking;
import wickbench.parts.kept.KeptSets;
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseSignIn;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.Roster;

/** A real home with people and journal, and a real framework with a base and one set that is at hand. */
final class PartsHouse implements AutoCloseable {
    static final PersonId ADA = new PersonId("p-01");
    static final PersonId BO = new PersonId("p-02");

    private final Path product;
    private final Felix framework;
    private final JournalFolder journal;
    private final H2Index index;
    private final PartsDoors doors;

    PartsHouse(Path folder) throws IOException, BundleException {
        product = folder.resolve("product");
        set("base", "The base", "0.1.0");
        set("training", "Training", "0.1.0");
        MakerKey.make(
                folder.resolve("secret"),
                Files.createDirectories(product.resolve("makers")).resolve("site.pem"));
        framework = new Felix(Map.of(
                "org.osgi.framework.storage",
                folder.resolve("cache").toString(),
                "felix.log.level",
                "0",
                "wickbench.product",
                product.toString(),
                "wickbench.features",
                "base"));
        framework.start();
        framework
                .getBundleContext()
                .installBundle("reference:" + jar("base", "0.1.0").toUri())
                .start();
        HomeFolder home = new HomeFolder(folder.resolve("home"));
        journal = JournalFolder.open(home, entries -> {});
        index = H2Index.open(home.folder().resolve("index"), journal, () -> List.of(new PeopleView()));
        Roster roster = new Roster(home, journal, index);
        HouseSignIn signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> Optional.empty());
        PeopleService people = new PeopleService(
                home, journal, roster, authority, new Keeping(home, journal, roster, at -> Optional.empty()));
        people.enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        people.enrol(BO, "Bo Lind", Set.of(Role.OPERATOR), ADA);
        KeptSets kept = new KeptSets(
                framework.getBundleContext(),
                home,
                ServiceLoader.load(FeatureService.class).findFirst().orElseThrow(),
                silent());
        doors = new PartsDoors(
                new PartsDesk(home, journal, index, authority, kept), PartsHouse::health, people, authority, signIn);
    }

    PartsDoors doors() {
        return doors;
    }

    List<String> kinds() {
        List<String> kinds = new java.util.ArrayList<>();
        journal.read(journal.stations().get(0), 0, (Entry entry) -> kinds.add(entry.kind()));
        return kinds;
    }

    boolean runs(String bundle) {
        return Stream.of(framework.getBundleContext().getBundles())
                .anyMatch(each -> bundle.equals(each.getSymbolicName()) && each.getState() == Bundle.ACTIVE);
    }

    /** Packs a set of another version, signed for this product. */
    Path signed(Path folder, String version) throws IOException {
        String file = "training-" + version + ".jar";
        byte[] jar = Files.readAllBytes(jar("training", "0.1.0"));
        byte[] feature = feature("training", "Training", version).getBytes(java.nio.charset.StandardCharsets.UTF_8);
        return Files.write(
                folder.resolve("training-" + version + ".zip"),
                SetPacking.pack(feature, Map.of(file, jar), MakerKey.read(folder.resolve("secret"))));
    }

    private static List<Health> health() {
        return List.of(
                new Health(Health.Of.BUNDLES, Health.State.WELL, "2 bundles run."),
                new Health(
                        Health.Of.DISK,
                        Health.State.MINDED,
                        "Only 900 MiB are free where the home lies; make room soon."));
    }

    private void set(String name, String title, String version) throws IOException {
        Files.writeString(
                Files.createDirectories(product.resolve("features")).resolve(name + ".json"),
                feature(name, title, version));
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().putValue("Bundle-ManifestVersion", "2");
        manifest.getMainAttributes().putValue("Bundle-SymbolicName", name);
        Files.createDirectories(jar(name, version).getParent());
        try (OutputStream out = Files.newOutputStream(jar(name, version))) {
            new JarOutputStream(out, manifest).close();
        }
    }

    private static String feature(String name, String title, String version) {
        String base = name.equals("base") ? "" : "{\"id\": \"x:base:osgifeature:0.1.0\"}";
        return """
                {"feature-resource-version": "1.0", "id": "x:%s:osgifeature:%s", "name": "%s",
                 "description": "What it is for.", "bundles": [{"id": "x:%s:%s"}],
                 "extensions": {"wickbench-requires": {"type": "artifacts", "kind": "mandatory", "artifacts": [%s]}}}
                """.formatted(name, version, title, name, version, base);
    }

    private Path jar(String name, String version) {
        return product.resolve("repo/x/" + name + "/" + version + "/" + name + "-" + version + ".jar");
    }

    private static Logger silent() {
        return (Logger) Proxy.newProxyInstance(
                Logger.class.getClassLoader(), new Class<?>[] {Logger.class}, (self, method, arguments) -> null);
    }

    @Override
    public void close() throws IOException, BundleException {
        index.close();
        journal.close();
        framework.stop();
    }
}
