package wickbench.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.launcher.ProductOnDisk.entry;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InstallSetTest {

    private static final Platform LINUX = new Platform("linux", "x86_64");

    @TempDir
    Path folder;

    @Test
    void what_is_required_comes_first_and_only_once() throws CannotStart {
        disk().bundle("a", List.of())
                .bundle("b", List.of())
                .bundle("c", List.of())
                .feature("base", List.of(entry("test:a:1")))
                .feature("left", List.of(entry("test:b:1")), "base")
                .feature("all", List.of(entry("test:c:1"), entry("test:b:1")), "left", "base");
        assertThat(names("all", "base")).containsExactly("a-1.jar", "b-1.jar", "c-1.jar");
    }

    @Test
    void features_may_require_each_other() throws CannotStart {
        disk().bundle("a", List.of())
                .feature("one", List.of(entry("test:a:1")), "two")
                .feature("two", List.of(), "one");
        assertThat(names("one")).containsExactly("a-1.jar");
    }

    @Test
    void only_bundles_for_this_platform_are_taken() throws CannotStart {
        disk().bundle("gtk", List.of())
                .feature(
                        "base",
                        List.of(
                                "{\"id\": \"test:gtk:1\", \"os\": \"linux\", \"arch\": \"x86_64\"}",
                                "{\"id\": \"test:cocoa:1\", \"os\": \"macosx\", \"arch\": \"x86_64\"}"));
        assertThat(names("base")).containsExactly("gtk-1.jar");
    }

    @Test
    void a_fragment_comes_only_with_its_bundle() throws CannotStart {
        disk().bundle("a", List.of())
                .bundle("b", List.of())
                .bundle("a", "es", List.of())
                .feature("base", List.of(entry("test:a:1")))
                .feature("more", List.of(entry("test:b:1")), "base")
                .feature("words", List.of(entry("test:a:jar:es:1"), entry("test:b:jar:es:1")), "base");
        assertThat(names("words")).containsExactly("a-1.jar", "a-1-es.jar");
        assertThatThrownBy(() -> names("words", "more")).hasMessageContaining("b-1-es.jar");
    }

    @Test
    void each_missing_bundle_is_named() {
        disk().feature("base", List.of(entry("test:gone:1"), entry("test:lost:1")));
        assertThatThrownBy(() -> names("base"))
                .isInstanceOfSatisfying(
                        CannotStart.class,
                        reasons -> assertThat(reasons.lines())
                                .hasSize(2)
                                .allMatch(line -> line.startsWith("bundle test:") && line.endsWith(".jar"))
                                .anyMatch(line -> line.contains("test:lost:1")));
    }

    @Test
    void a_missing_feature_is_named_with_its_file() {
        assertThatThrownBy(() -> names("stock"))
                .isInstanceOf(CannotStart.class)
                .hasMessageContaining("no feature \"stock\"");
    }

    @Test
    void no_feature_at_all_is_refused() {
        assertThatThrownBy(this::names).isInstanceOf(CannotStart.class).hasMessageContaining("no feature is named");
    }

    @Test
    void a_broken_file_is_named() {
        disk().featureText("base", "{\"id\": ");
        assertThatThrownBy(() -> names("base"))
                .isInstanceOf(CannotStart.class)
                .hasMessageContaining("base.json is not a feature");
    }

    @Test
    void a_required_feature_of_another_version_is_refused() {
        disk().featureText("base", "{\"id\": \"test:base:osgifeature:2\"}").feature("top", List.of(), "base");
        assertThatThrownBy(() -> names("top"))
                .isInstanceOf(CannotStart.class)
                .hasMessageContaining("requires test:base:osgifeature:1")
                .hasMessageContaining("holds test:base:osgifeature:2");
    }

    @Test
    void a_mandatory_extension_that_is_not_known_is_refused() {
        disk().featureText("base", """
                {"id": "test:base:osgifeature:1", "extensions": {"magic": {"type": "text", "kind": "mandatory", "text": ["x"]}}}""");
        assertThatThrownBy(() -> names("base")).isInstanceOf(CannotStart.class).hasMessageContaining("\"magic\"");
    }

    private ProductOnDisk disk() {
        return new ProductOnDisk(folder);
    }

    private List<String> names(String... features) throws CannotStart {
        return InstallSet.of(disk().product(), List.of(features), LINUX).stream()
                .map(jar -> jar.getFileName().toString())
                .toList();
    }
}
