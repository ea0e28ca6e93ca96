package wickbench.proof;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A checkpoint as text: C2SP tlog-checkpoint inside a C2SP signed-note with one Ed25519 signature.
 *
 * @param origin whose journal, which is also the name of the key
 * @param text what is signed
 * @param signature base64 of four bytes key id and 64 bytes signature
 */
public record Note(String origin, long size, Digest root, String text, String signature) {
    private static final byte ED25519 = 1;
    private static final int KEY_ID = 4;
    private static final Pattern FORM = Pattern.compile(
            "((\\S+)\n(0|[1-9][0-9]{0,17})\n([A-Za-z0-9+/]{43}=)\n)" + "\n\u2014 (\\S+) ([A-Za-z0-9+/]{91}=)\n");

    /**
     * Signs that a journal holds {@code size} entries under {@code root}.
     *
     * @param origin whose journal; no blank in it
     * @param signer signs a message by the key whose open half is {@code key}
     */
    public static Note sign(String origin, long size, Digest root, OpenKey key, UnaryOperator<byte[]> signer) {
        String text = origin + "\n" + size + "\n" + base64(root.bytes()) + "\n";
        byte[] signature = signer.apply(utf8(text));
        return new Note(origin, size, root, text, base64(concat(keyId(origin, key), signature)));
    }

    /** Reads a note; empty when it has another form. Says nothing of whether the signature is right. */
    public static Optional<Note> parse(String note) {
        Matcher form = FORM.matcher(note);
        if (!form.matches() || !form.group(2).equals(form.group(5))) {
            return Optional.empty();
        }
        Note read = new Note(
                form.group(2),
                Long.parseLong(form.group(3)),
                Digest.of(Base64.getDecoder().decode(form.group(4))),
                form.group(1),
                base64(Base64.getDecoder().decode(form.group(6))));
        // base64 has spare bits at its end; a note that differs in them is another text
        return read.whole().equals(note) && read.text.endsWith(base64(read.root.bytes()) + "\n")
                ? Optional.of(read)
                : Optional.empty();
    }

    /** Returns the note as it stands in files and reports. */
    public String whole() {
        return text + "\n\u2014 " + origin + " " + signature + "\n";
    }

    /** Tells whether the origin signed this by the key. */
    public boolean signedBy(OpenKey key) {
        byte[] bytes = Base64.getDecoder().decode(signature);
        return Arrays.equals(Arrays.copyOf(bytes, KEY_ID), keyId(origin, key))
                && key.signed(utf8(text), Arrays.copyOfRange(bytes, KEY_ID, bytes.length));
    }

    private static byte[] keyId(String name, OpenKey key) {
        byte[] type = {'\n', ED25519};
        byte[] hash = new TreeHash().plain(concat(concat(utf8(name), type), key.raw()));
        return Arrays.copyOf(hash, KEY_ID);
    }

    private static byte[] concat(byte[] left, byte[] right) {
        return ByteBuffer.allocate(left.length + right.length)
                .put(left)
                .put(right)
                .array();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }
}
