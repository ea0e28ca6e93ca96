package wickbench.parts;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.command.Hands;
import wickbench.api.part.Health;
import wickbench.api.part.Parts;
import wickbench.api.part.SelfCheck;
import wickbench.parts.archive.MakerKey;
import wickbench.parts.archive.SetPacking;
import wickbench.parts.running.Packed;
import wickbench.parts.running.ProductSets;
import wickbench.parts.words.PartsWords;

/** What is installed, and more or less of it. */
@Command(name = "feature", synopsisSubcommandLabel = "COMMAND")
final class FeatureCommand {
    private static final int FOUND_WANTING = 1;

    private final Parts parts;
    private final SelfCheck check;
    private final ProductSets product;
    private final Hands hands;
    private final PartsPrint print;

    FeatureCommand(Parts parts, SelfCheck check, ProductSets product, Hands hands, PartsPrint print) {
        this.parts = parts;
        this.check = check;
        this.product = product;
        this.hands = hands;
        this.print = print;
    }

    @Command(name = "list")
    int list() {
        print.list(parts.sets());
        return 0;
    }

    @Command(name = "verify")
    int verify(@Parameters(paramLabel = "FILE") Path file) {
        try {
            print.good(parts.look(file));
            return 0;
        } catch (Refusal wanting) {
            print.wanting(wanting);
            return FOUND_WANTING;
        }
    }

    /** A file is meant where there is one; else a set that the product holds. */
    @Command(name = "add")
    int add(@Parameters(paramLabel = "FILE") Path file) {
        boolean named = !Files.isRegularFile(file)
                && product.all().containsKey(file.getFileName().toString());
        print.added(
                named
                        ? parts.add(file.getFileName().toString(), hands.signer(), print.progress())
                        : parts.add(file, hands.signer(), print.progress()));
        return 0;
    }

    @Command(name = "remove")
    int remove(@Parameters(paramLabel = "NAME") String name) {
        print.removed(parts.remove(name, hands.signer()));
        return 0;
    }

    @Command(name = "check")
    int check() {
        List<Health> found = check.look();
        print.health(found);
        return found.stream().anyMatch(each -> each.state() == Health.State.UNWELL) ? FOUND_WANTING : 0;
    }

    /** A file is meant where there is one; else a set that the product holds. */
    @Command(name = "pack")
    int pack(
            @Parameters(paramLabel = "NAME") Path set,
            @Parameters(paramLabel = "OUT") Path out,
            @Option(names = "--key", required = true, paramLabel = "KEY") Path key) {
        if (Files.exists(out)) {
            throw new BadInput(Complaint.of(out.toString(), PartsWords.get("file.there")));
        }
        MakerKey maker = MakerKey.read(key);
        Packed packed = Files.isRegularFile(set)
                ? product.packed(set)
                : product.packed(set.getFileName().toString());
        byte[] archive = SetPacking.pack(packed.feature(), packed.jars(), maker);
        try {
            Files.write(out, archive);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        print.packed(packed.id(), out, archive);
        return 0;
    }

    @Command(name = "key")
    int key(@Parameters(paramLabel = "SECRET") Path secret, @Parameters(paramLabel = "OPEN") Path open) {
        MakerKey.make(secret, open);
        print.key(secret, open);
        return 0;
    }
}
