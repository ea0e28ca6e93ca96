package wickbench.launcher;

import java.io.IOException;
import java.nio.file.Path;

/** A process of its own that opens a cache folder, tells its path and keeps it until killed. */
final class HoldCache {

    private HoldCache() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        try (var cache = CacheFolder.below(Path.of(arguments[0]))) {
            System.out.println(cache.folder());
            Thread.sleep(Long.MAX_VALUE);
        }
    }
}
