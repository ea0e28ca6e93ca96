package wickbench.tests;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.wiring.BundleRevision;
import wickbench.launcher.CannotStart;
import wickbench.launcher.Host;
import wickbench.launcher.Phases;
import wickbench.launcher.Product;

/** An install set of the built product, running in a framework of its own. */
record StartedSet(Host host) implements AutoCloseable {
    private static final String COMMANDS = "wickbench.api.command.CommandSet";

    static StartedSet of(List<String> features, Path temporary) throws CannotStart, IOException {
        return of(BuiltProduct.folder(), features, temporary);
    }

    /** Starts another product than the one that was built. */
    static StartedSet of(Path product, List<String> features, Path temporary) throws CannotStart, IOException {
        return new StartedSet(Host.start(Product.of(product), features, temporary.resolve("caches"), Phases.silent()));
    }

    /** The names of bundles that are not active, or of fragments that are not attached. */
    List<String> notRunning() {
        return Stream.of(host.bundles())
                .filter(bundle -> !runs(bundle))
                .map(Bundle::getSymbolicName)
                .toList();
    }

    /** The names of the commands that are offered. */
    Set<String> commands() throws InvalidSyntaxException {
        return Stream.of(host.context().getAllServiceReferences(COMMANDS, null))
                .map(offered -> offered.getProperty("wickbench.command").toString())
                .collect(Collectors.toSet());
    }

    Components components() throws ReflectiveOperationException {
        return Components.in(host.context());
    }

    /** Finds a bundle by its name. */
    Bundle bundle(String name) {
        return Stream.of(host.bundles())
                .filter(bundle -> name.equals(bundle.getSymbolicName()))
                .findFirst()
                .orElseThrow();
    }

    /** Loads a type as the bundle of the ports offers it. */
    Class<?> port(String name) throws ClassNotFoundException {
        return bundle("wickbench.api").loadClass(name);
    }

    /** Returns a service by its port's name. */
    Object service(String port) {
        return host.context().getService(host.context().getServiceReference(port));
    }

    /** Offers a home in this folder, as the command line does for the time of a call. */
    void nameHome(Path folder) throws ReflectiveOperationException {
        Object home =
                port("wickbench.api.home.HomeFolder").getConstructor(Path.class).newInstance(folder);
        host.context().registerService("wickbench.api.home.Home", home, null);
    }

    @Override
    public void close() throws IOException {
        host.close();
    }

    private static boolean runs(Bundle bundle) {
        boolean fragment = (bundle.adapt(BundleRevision.class).getTypes() & BundleRevision.TYPE_FRAGMENT) != 0;
        return bundle.getState() == (fragment ? Bundle.RESOLVED : Bundle.ACTIVE);
    }
}
