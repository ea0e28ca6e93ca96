package wickbench.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The page for auditors, run as it is printed: its scripts are taken out of it, saved, and its commands executed in their order.
 *
 * <p>Needs python3, openssl and sha256sum; nothing of this program.
 */
public final class Recipe {
    private static final Path PAGE = Path.of("..", "..", "docs", "verify-without-wickbench.md");
    private static final Pattern CHAPTER = Pattern.compile("^## (.*)$", Pattern.MULTILINE);
    private static final Pattern BLOCK = Pattern.compile("```(sh|python)\n(.*?)```", Pattern.DOTALL);
    private static final long PATIENCE_SECONDS = 120;

    private Recipe() {}

    /** What came of a run: the exit code of the first step that failed, or 0, and everything that was printed. */
    public record Said(int code, String text) {
        public List<String> lines() {
            return text.lines().toList();
        }
    }

    /** Runs chapters of the page in a folder, one after the other, to the end or to the first step that fails. */
    public static Said run(Path folder, String... chapters) throws IOException, InterruptedException {
        StringBuilder text = new StringBuilder();
        save(folder, chapter("The tools"));
        for (String title : chapters) {
            String chapter = chapter(title);
            save(folder, chapter);
            Matcher blocks = BLOCK.matcher(chapter);
            while (blocks.find()) {
                Said said = blocks.group(1).equals("sh") ? sh(folder, blocks.group(2)) : new Said(0, "");
                text.append(said.text());
                if (said.code() != 0) {
                    return new Said(said.code(), text.toString());
                }
            }
        }
        return new Said(0, text.toString());
    }

    private static String chapter(String title) throws IOException {
        String page = Files.readString(PAGE);
        Matcher heads = CHAPTER.matcher(page);
        while (heads.find()) {
            if (heads.group(1).equals(title)) {
                int from = heads.end();
                return page.substring(from, heads.find() ? heads.start() : page.length());
            }
        }
        throw new IllegalArgumentException("the page has no chapter " + title);
    }

    private static void save(Path folder, String chapter) throws IOException {
        Matcher blocks = BLOCK.matcher(chapter);
        while (blocks.find()) {
            if (blocks.group(1).equals("python")) {
                String name = blocks.group(2).lines().findFirst().orElseThrow().substring(2);
                Files.writeString(folder.resolve(name), blocks.group(2));
            }
        }
    }

    private static Said sh(Path folder, String script) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("sh", "-e", "-c", script)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        return new Said(process.exitValue(), text);
    }
}
