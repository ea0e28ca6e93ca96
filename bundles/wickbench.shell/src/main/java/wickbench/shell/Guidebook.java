package wickbench.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.swt.program.Program;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/**
 * The guide that lies in the product's folder, opened by the program that the user reads such pages with.
 *
 * @param folder empty where the desk runs without a product folder
 * @param opener shows a file; tells whether it did
 */
record Guidebook(Optional<Path> folder, Predicate<String> opener) {
    /** Says where the product lies; the launcher tells the framework. */
    private static final String PRODUCT = "wickbench.product";

    static Guidebook installed() {
        return new Guidebook(
                Optional.ofNullable(FrameworkUtil.getBundle(Guidebook.class))
                        .map(Bundle::getBundleContext)
                        .map(context -> context.getProperty(PRODUCT))
                        .map(product -> Path.of(product).resolve("docs")),
                Program::launch);
    }

    /** Opens a page of the guide; returns what there is to say of it. */
    String open(String page) {
        Optional<Path> file = folder.map(docs -> docs.resolve(page)).filter(Files::isRegularFile);
        if (file.isEmpty()) {
            return ShellWords.get("guide.absent");
        }
        return ShellWords.get(opener.test(file.get().toString()) ? "guide.opened" : "guide.lies", file.get());
    }
}
