package wickbench.console.door;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Sends what is printed as frames of one kind. */
final class FrameStream extends OutputStream {
    private final Wire wire;
    private final Wire.Kind kind;

    private FrameStream(Wire wire, Wire.Kind kind) {
        this.wire = wire;
        this.kind = kind;
    }

    /** Returns a stream of text that goes to the caller; once the caller is gone it goes nowhere. */
    static PrintStream over(Wire wire, Wire.Kind kind) {
        return new PrintStream(new FrameStream(wire, kind), true, StandardCharsets.UTF_8);
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        wire.send(kind, bytes, from, length);
    }
}
