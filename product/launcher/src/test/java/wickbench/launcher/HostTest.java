package wickbench.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.launcher.ProductOnDisk.entry;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.service.feature.FeatureService;

class HostTest {

    private static final List<String> APPLICATION =
            List.of("Bundle-Activator: " + SampleApplication.class.getName(), "Import-Package: org.osgi.framework");

    @TempDir
    Path folder;

    private ProductOnDisk disk;
    private Path caches;

    @BeforeEach
    void lay() {
        disk = new ProductOnDisk(folder.resolve("a product"));
        caches = folder.resolve("caches");
    }

    @Test
    void the_application_is_called_with_its_arguments() throws Exception {
        disk.bundle("app", APPLICATION, SampleApplication.class).feature("base", List.of(entry("test:app:1")));
        try (Host host = start()) {
            assertThat(host.application().applyAsInt(new String[] {"a", "b"})).isEqualTo(2);
        }
    }

    @Test
    void two_hosts_run_side_by_side_and_leave_no_cache_behind() throws Exception {
        disk.bundle("app", APPLICATION, SampleApplication.class).feature("base", List.of(entry("test:app:1")));
        try (Host one = start();
                Host two = start()) {
            assertThat(one.bundles()).allMatch(bundle -> bundle.getState() == Bundle.ACTIVE);
            assertThat(two.bundles()).hasSize(2);
            assertThat(cacheFolders()).hasSize(2);
        }
        assertThat(cacheFolders()).isEmpty();
    }

    @Test
    void bundles_may_know_how_they_were_installed_and_read_features_as_the_launcher_does() throws Exception {
        disk.bundle("app", APPLICATION, SampleApplication.class).feature("base", List.of(entry("test:app:1")));
        try (Host host = start()) {
            assertThat(host.context().getProperty("wickbench.features")).isEqualTo("base");
            assertThat(host.context().getProperty("wickbench.product"))
                    .isEqualTo(disk.product().folder().toString());
            FeatureService reader = host.context().getService(host.context().getServiceReference(FeatureService.class));
            assertThat(reader.getIDfromMavenCoordinates("test:app:1").getArtifactId()).isEqualTo("app");
        }
    }

    @Test
    void an_unresolved_bundle_is_named_with_what_it_lacks() {
        disk.bundle("upper", List.of("Import-Package: lower.pages", "Export-Package: upper.pages"))
                .bundle("lower", List.of("Import-Package: nowhere.at.all", "Export-Package: lower.pages"))
                .bundle("stray", List.of("Fragment-Host: nobody"))
                .feature("base", List.of(entry("test:upper:1"), entry("test:lower:1"), entry("test:stray:1")));
        assertThatThrownBy(this::start)
                .isInstanceOfSatisfying(
                        CannotStart.class,
                        reasons -> assertThat(reasons.lines())
                                .containsExactly(
                                        "bundle upper cannot be resolved: nothing installed offers nowhere.at.all (osgi.wiring.package)",
                                        "bundle lower cannot be resolved: nothing installed offers nowhere.at.all (osgi.wiring.package)",
                                        "fragment stray found no bundle to attach to"));
    }

    @Test
    void a_bundle_that_fails_to_start_is_named() throws IOException {
        disk.bundle(
                        "bad",
                        List.of(
                                "Bundle-Activator: " + FailingActivator.class.getName(),
                                "Import-Package: org.osgi.framework"),
                        FailingActivator.class)
                .feature("base", List.of(entry("test:bad:1")));
        assertThatThrownBy(this::start)
                .isInstanceOf(CannotStart.class)
                .hasMessage("bundle bad does not start: java.lang.IllegalStateException: no good");
        assertThat(cacheFolders()).isEmpty();
    }

    @Test
    void a_cache_that_cannot_be_made_is_told() throws IOException {
        Files.writeString(caches, "a file in the way");
        disk.feature("base", List.of());
        assertThatThrownBy(this::start)
                .isInstanceOf(CannotStart.class)
                .hasMessageContaining("no place for its state below " + caches);
    }

    @Test
    void exactly_one_application_is_wanted() throws Exception {
        disk.bundle("one", APPLICATION, SampleApplication.class)
                .bundle("two", APPLICATION, SampleApplication.class)
                .bundle("mute", List.of())
                .feature("base", List.of(entry("test:one:1"), entry("test:two:1")))
                .feature("none", List.of(entry("test:mute:1")));
        try (Host host = start()) {
            assertThatThrownBy(host::application)
                    .isInstanceOf(CannotStart.class)
                    .hasMessageContaining("offer 2 applications");
        }
        try (Host host = start("none")) {
            assertThatThrownBy(host::application)
                    .isInstanceOf(CannotStart.class)
                    .hasMessageContaining("offer 0 applications");
        }
    }

    private Host start(String... features) throws CannotStart, IOException {
        List<String> named = features.length == 0 ? List.of("base") : List.of(features);
        return Host.start(disk.product(), named, caches, Phases.silent());
    }

    private List<Path> cacheFolders() throws IOException {
        try (var children = Files.list(caches)) {
            return children.filter(Files::isDirectory).toList();
        }
    }
}
