package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the built jars say of themselves, which is what a framework believes. */
class ManifestsTest {

    /** Fewer would mean that the tests look at the wrong place. */
    private static final int AT_LEAST = 12;

    static Stream<BundleManifest> house() {
        return BuiltProduct.houseJars().stream().map(BundleManifest::of);
    }

    @Test
    void the_house_was_found() {
        assertThat(house()).hasSizeGreaterThanOrEqualTo(AT_LEAST);
    }

    @ParameterizedTest
    @MethodSource("house")
    void a_bundle_is_named_as_its_artifact(BundleManifest bundle) {
        assertThat(bundle.symbolicName()).isEqualTo(bundle.artifact());
    }

    @ParameterizedTest
    @MethodSource("house")
    void a_bundle_exports_only_below_its_own_root(BundleManifest bundle) {
        assertThat(bundle.exports()).allMatch(name -> owner(name).equals(bundle.symbolicName()));
    }

    @ParameterizedTest
    @MethodSource("house")
    void arrows_point_down_only(BundleManifest bundle) {
        Set<String> looksAt = bundle.imports().stream()
                .filter(name -> name.startsWith("wickbench."))
                .map(ManifestsTest::owner)
                .filter(owner -> !owner.equals(bundle.symbolicName()))
                .collect(Collectors.toSet());
        assertThat(Floors.below(bundle.symbolicName()))
                .as("what %s may look at", bundle.symbolicName())
                .containsAll(looksAt);
    }

    @ParameterizedTest
    @MethodSource("house")
    void windows_are_seen_from_the_desk_up(BundleManifest bundle) {
        if (!Floors.seesWindows(bundle.symbolicName())) {
            assertThat(bundle.imports()).noneMatch(name -> name.startsWith("org.eclipse."));
        }
    }

    @ParameterizedTest
    @MethodSource("house")
    void only_the_index_knows_a_database(BundleManifest bundle) {
        if (!bundle.symbolicName().equals("wickbench.index")) {
            assertThat(bundle.imports())
                    .noneMatch(name -> name.startsWith("org.h2") || name.startsWith("org.osgi.service.jdbc"))
                    .doesNotContain("java.sql", "javax.sql");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"wickbench.api", "wickbench.proof"})
    void the_ports_and_the_proofs_need_nothing_but_the_platform(String name) {
        BundleManifest alone = house().filter(bundle -> bundle.symbolicName().equals(name))
                .findFirst()
                .orElseThrow();
        assertThat(alone.foreignImports()).isEmpty();
    }

    private static String owner(String packageName) {
        List<String> bundles = house().map(BundleManifest::symbolicName).toList();
        return Floors.ownerOf(packageName, bundles).orElse("nobody's " + packageName);
    }
}
