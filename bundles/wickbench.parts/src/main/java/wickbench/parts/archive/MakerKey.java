package wickbench.parts.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.parts.words.PartsWords;

/** The secret half of a maker's key, in a file that only its owner reads. */
public final class MakerKey {
    private final PrivateKey key;

    private MakerKey(PrivateKey key) {
        this.key = key;
    }

    /**
     * Makes a key: the secret half in {@code secret}, the open half in {@code open}, which goes into the {@code makers} of products.
     *
     * @throws BadInput when one of the files is there already; a key is never overwritten
     */
    public static void make(Path secret, Path open) {
        for (Path file : new Path[] {secret, open}) {
            if (Files.exists(file)) {
                throw new BadInput(Complaint.of(file.toString(), PartsWords.get("file.there")));
            }
        }
        try {
            KeyPair pair = KeyPairGenerator.getInstance(Maker.ALGORITHM).generateKeyPair();
            createOwned(secret);
            Files.writeString(secret, Pem.of(Pem.PRIVATE, pair.getPrivate().getEncoded()));
            Files.writeString(open, Pem.of(Pem.PUBLIC, pair.getPublic().getEncoded()), StandardOpenOption.CREATE_NEW);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform of this age has Ed25519", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads the secret half. */
    public static MakerKey read(Path secret) {
        if (!Files.isRegularFile(secret)) {
            throw new BadInput(Complaint.of(secret.toString(), PartsWords.get("file.none")));
        }
        try {
            byte[] encoded = Pem.read(Pem.PRIVATE, Files.readString(secret)).orElseThrow(GeneralSecurityException::new);
            return new MakerKey(
                    KeyFactory.getInstance(Maker.ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(encoded)));
        } catch (GeneralSecurityException | java.nio.charset.MalformedInputException noKey) {
            throw new BadInput(Complaint.of(secret.toString(), PartsWords.get("key.private")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    byte[] sign(byte[] text) {
        try {
            Signature signature = Signature.getInstance(Maker.ALGORITHM);
            signature.initSign(key);
            signature.update(text);
            return signature.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a key that was read signs", e);
        }
    }

    private static void createOwned(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        } else {
            Files.createFile(file);
        }
    }
}
