package wickbench.console.door;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Optional;
import wickbench.api.check.Checked;

/** Answers one caller. */
final class Visit {
    private final Wire wire;
    private final String token;
    private final Answering answering;

    Visit(Wire wire, String token, Answering answering) {
        this.wire = wire;
        this.token = token;
        this.answering = answering;
    }

    /** Reads the request and answers it; who does not know the token hears nothing. */
    void answer() throws IOException {
        Wire.Frame first = wire.receive();
        if (first.kind() == Wire.Kind.REQUEST
                && Request.read(text(first)) instanceof Checked.Good<Request> good
                && knows(good.value().token())) {
            wire.send(Wire.Kind.LET_IN);
            wire.send(Wire.Kind.END, (byte) run(good.value()));
        }
    }

    private int run(Request request) {
        if (request.arguments().isEmpty()) {
            return answering.comeForward() ? 0 : 1;
        }
        try (PrintStream out = FrameStream.over(wire, Wire.Kind.OUT);
                PrintStream err = FrameStream.over(wire, Wire.Kind.ERR)) {
            return answering.command(request.arguments(), request.folder(), out, err, this::ask);
        }
    }

    /** Compares in constant time. */
    private boolean knows(String told) {
        return MessageDigest.isEqual(told.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }

    private Optional<char[]> ask(String prompt) {
        try {
            wire.send(Wire.Kind.ASK, prompt.getBytes(StandardCharsets.UTF_8));
            Wire.Frame reply = wire.receive();
            return reply.kind() == Wire.Kind.SECRET ? Optional.of(secret(reply.content())) : Optional.empty();
        } catch (IOException gone) {
            throw new UncheckedIOException("the caller went away before answering", gone);
        }
    }

    private static char[] secret(byte[] utf8) {
        CharBuffer decoded = StandardCharsets.UTF_8.decode(ByteBuffer.wrap(utf8));
        char[] secret = new char[decoded.remaining()];
        decoded.get(secret);
        Arrays.fill(utf8, (byte) 0);
        Arrays.fill(decoded.array(), '\0');
        return secret;
    }

    private static String text(Wire.Frame frame) {
        return new String(frame.content(), StandardCharsets.UTF_8);
    }
}
