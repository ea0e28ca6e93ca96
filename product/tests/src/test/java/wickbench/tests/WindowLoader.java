package wickbench.tests;

import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;

/**
 * Loads the hand beside the windows of a framework, from the class path of the tests.
 *
 * <p>The tests must not see windows themselves, or those of the framework would not be theirs; the hand sees the framework's, and
 * the tests see the hand by what it can do.
 */
final class WindowLoader extends URLClassLoader {
    private static final String HANDS = "wickbench.testing.ui.";

    private final Bundle pages;

    /** @param pages a bundle that knows windows, widgets and shell */
    WindowLoader(Bundle pages) {
        super(classPath(), WindowLoader.class.getClassLoader());
        this.pages = pages;
    }

    private static URL[] classPath() {
        return Stream.of(System.getProperty("java.class.path").split(System.getProperty("path.separator")))
                .map(WindowLoader::url)
                .toArray(URL[]::new);
    }

    private static URL url(String entry) {
        try {
            return Path.of(entry).toUri().toURL();
        } catch (MalformedURLException e) {
            throw new IllegalArgumentException(entry, e);
        }
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        synchronized (getClassLoadingLock(name)) {
            if (name.startsWith(HANDS)) {
                Class<?> loaded = findLoadedClass(name);
                return loaded == null ? findClass(name) : loaded;
            }
            return name.startsWith("org.eclipse.") || name.startsWith("wickbench.widgets.")
                    ? pages.loadClass(name)
                    : super.loadClass(name, resolve);
        }
    }
}
