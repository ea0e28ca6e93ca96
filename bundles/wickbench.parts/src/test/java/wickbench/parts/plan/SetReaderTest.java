package wickbench.parts.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.osgi.framework.Version;
import org.osgi.service.feature.FeatureService;
import wickbench.api.check.BadInput;

/** What a set says of itself, read by the reader that the launcher has too. */
class SetReaderTest {
    private final SetReader reader =
            new SetReader(ServiceLoader.load(FeatureService.class).findFirst().orElseThrow());

    @Test
    void what_a_set_says_is_read() {
        SetPlan plan = read("""
                {"feature-resource-version": "1.0", "id": "x:extra:osgifeature:1.2.3", "name": "Extra",
                 "bundles": [{"id": "x:a:1.0.0"}],
                 "extensions": {"wickbench-requires": {"type": "artifacts", "kind": "mandatory",
                   "artifacts": [{"id": "x:base:osgifeature:0.1.0"}]}}}""");
        assertThat(plan.id()).isEqualTo(new SetId("extra", new Version(1, 2, 3)));
        assertThat(plan.title()).isEqualTo("Extra");
        assertThat(plan.bundles()).extracting(BundleId::path).containsExactly("x/a/1.0.0/a-1.0.0.jar");
        assertThat(plan.requires()).containsExactly(new SetId("base", new Version(0, 1, 0)));
        assertThat(plan.everywhere()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''                                                    | empty",
                "[]                                                    | no feature",
                "'{\"id\": \"x:extra:osgifeature:1.0.0\", \"id\": \"b\"}'  | not JSON",
                "{}                                                    | no feature",
                "'{\"id\": 7}'                                           | no feature",
                "'{\"id\": \"extra\"}'                                     | no feature",
                "'{\"id\": \"x:extra:1.0.0\", \"bundles\": 7}'             | no feature",
                "'{\"id\": \"x:extra:1.0.0\", \"bundles\": [{}]}'          | no feature",
                "'{\"id\": \"x:../extra:1.0.0\"}'                          | small letters",
                "'{\"id\": \"x:extra:new\"}'                               | such as 0.1.0",
                "'{\"id\": \"x:extra:1.0.0\", \"bundles\": [{\"id\": \"x:a:1\"}, {\"id\": \"y:a:2\"}]}' | twice",
                "'{\"id\": \"x:extra:1.0.0\", \"extensions\": {\"odd\": {\"type\": \"text\", \"kind\": \"mandatory\", \"text\": [\"x\"]}}}' | not known",
                "'{\"id\": \"x:extra:1.0.0\", \"extensions\": {\"wickbench-requires\": {\"type\": \"text\", \"kind\": \"mandatory\", \"text\": [\"x\"]}}}' | list of artifacts"
            })
    void another_shape_is_one_clear_line(String json, String said) {
        assertThatThrownBy(() -> read(json))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith("set.zip!feature.json")
                .hasMessageContaining(said)
                .satisfies(refused -> assertThat(refused.getMessage().lines()).hasSize(1));
    }

    @Test
    void what_is_deep_or_long_is_refused() {
        assertThatThrownBy(() -> read("[".repeat(100_000))).isInstanceOf(BadInput.class);
        assertThatThrownBy(() -> read(" ".repeat(300_000)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("large");
    }

    private SetPlan read(String json) {
        return reader.read("set.zip!feature.json", json.getBytes(StandardCharsets.UTF_8));
    }
}
