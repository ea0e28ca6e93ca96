package wickbench.tests;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;

/** Every class of the house, read from the built jars; what third parties put into the same jars stays out. */
final class HouseClasses {

    private HouseClasses() {}

    static JavaClasses all() {
        List<JarFile> jars =
                BuiltProduct.houseJars().stream().map(HouseClasses::open).toList();
        return new ClassFileImporter()
                .withImportOption(location -> location.contains("!/wickbench/"))
                .importJars(jars);
    }

    private static JarFile open(Path jar) {
        try {
            return new JarFile(jar.toFile());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
