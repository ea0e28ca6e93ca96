package wickbench.parts.archive;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.parts.words.PartsWords;

/** Who makes sets that this product takes, known by an Ed25519 key (RFC 8032). */
record Maker(String name, PublicKey key) {
    static final String ALGORITHM = "Ed25519";

    static Maker read(String file, String name, String pem) {
        try {
            byte[] encoded = Pem.read(Pem.PUBLIC, pem).orElseThrow(GeneralSecurityException::new);
            return new Maker(name, KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(encoded)));
        } catch (GeneralSecurityException noKey) {
            throw new BadInput(Complaint.of(file, PartsWords.get("key.public")));
        }
    }

    boolean signed(byte[] text, byte[] signature) {
        try {
            Signature check = Signature.getInstance(ALGORITHM);
            check.initVerify(key);
            check.update(text);
            return check.verify(signature);
        } catch (GeneralSecurityException undecodable) {
            return false;
        }
    }
}
