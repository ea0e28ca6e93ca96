package wickbench.parts.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The makers whose sets this product takes: each {@code NAME.pem} in its folder {@code makers} holds one's public key.
 *
 * <p>The folder belongs to the product, not to a home: whoever may write records must not thereby decide what code runs.
 */
public final class Makers {
    private static final String FOLDER = "makers";
    private static final String ENDING = ".pem";

    private final List<Maker> pinned;

    private Makers(List<Maker> pinned) {
        this.pinned = pinned;
    }

    /**
     * Reads the keys of a product.
     *
     * @throws wickbench.api.check.BadInput when a file there is no such key
     */
    public static Makers of(Path product) {
        Path folder = product.resolve(FOLDER);
        if (!Files.isDirectory(folder)) {
            return new Makers(List.of());
        }
        try (Stream<Path> files = Files.list(folder)) {
            return new Makers(files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .map(Makers::read)
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the name of the maker who signed this text, if one of the pinned did. */
    Optional<String> signer(byte[] text, byte[] signature) {
        return pinned.stream()
                .filter(maker -> maker.signed(text, signature))
                .map(Maker::name)
                .findFirst();
    }

    private static Maker read(Path file) {
        String name = file.getFileName().toString();
        try {
            return Maker.read(
                    file.toString(), name.substring(0, name.length() - ENDING.length()), Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
