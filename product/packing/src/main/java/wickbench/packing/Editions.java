package wickbench.packing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import wickbench.launcher.CannotStart;
import wickbench.launcher.Product;

/**
 * Lays editions: {@code PRODUCT EDITIONS OUT [NAME ...]}, three folders and the names of the editions wanted, all without any.
 *
 * <p>Each comes to lie in {@code OUT/NAME-of-platform/}. Ends with 1 when one of them is not as it should be.
 */
public final class Editions {

    private final Product product;
    private final Path out;
    private final Path java;

    private Editions(Product product, Path out) {
        this.product = product;
        this.out = out;
        this.java = out.resolve("java");
    }

    public static void main(String[] arguments) throws IOException, CannotStart, InterruptedException {
        var editions = new Editions(
                Product.of(Path.of(arguments[0])), Path.of(arguments[2]).toAbsolutePath());
        List<String> wanted = Arrays.asList(arguments).subList(3, arguments.length);
        List<Edition> all = Edition.all(Path.of(arguments[1]), editions.product);
        List<String> names = all.stream().map(Edition::name).toList();
        if (!names.containsAll(wanted)) {
            System.err.println("editions: choose from " + String.join(", ", names));
            System.exit(2);
        }
        boolean sound = true;
        for (Edition edition : all) {
            if (wanted.isEmpty() || wanted.contains(edition.name())) {
                sound &= editions.lay(edition);
            }
        }
        Papers.delete(editions.java);
        System.exit(sound ? 0 : 1);
    }

    private boolean lay(Edition edition) throws IOException, CannotStart, InterruptedException {
        boolean sound = true;
        for (Target target : Target.all()) {
            Path parent = Files.createDirectories(out.resolve(target.name()));
            Path folder = new Laying(product, edition, target).below(parent);
            if (target.isHere()) {
                addJava(folder);
            }
            List<String> faults = Inspection.of(folder, target);
            faults.forEach(fault -> System.err.println("editions: " + fault));
            sound &= faults.isEmpty();
            System.out.println(out.relativize(folder));
        }
        return sound;
    }

    /** The editions ask for the same, so one is made and copied. */
    private void addJava(Path folder) throws IOException, InterruptedException {
        if (!Files.exists(java)) {
            JavaRuntime.make(java);
        }
        Papers.copyFolder(java, folder.resolve("runtime"));
    }
}
