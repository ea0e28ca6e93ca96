package wickbench.console.door;

import java.io.IOException;
import java.io.PrintStream;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Sends what is wanted to the program that holds the home, and prints what it answers. */
public final class Knock {
    private final DoorFolder folder;
    private final PrintStream out;
    private final PrintStream err;
    private final Asking asking;

    public Knock(Path home, PrintStream out, PrintStream err, Asking asking) {
        folder = new DoorFolder(home);
        this.out = out;
        this.err = err;
        this.asking = asking;
    }

    /** Lets the holder run a command; {@code from} is where relative paths start. */
    public Reply command(List<String> arguments, Path from) {
        return at(key -> new Request(key.token(), arguments, from));
    }

    /** Asks the holder to bring its window to the front; tells whether it did. */
    public boolean comeForward() {
        return at(key -> new Request(key.token(), List.of(), Path.of("").toAbsolutePath())) instanceof Reply.Ended ended
                && ended.code() == 0;
    }

    private interface Asked {
        Request with(DoorKey key);
    }

    private Reply at(Asked asked) {
        try {
            Optional<DoorKey> key = folder.find();
            return key.isPresent() ? knock(key.get(), asked.with(key.get())) : new Reply.Nobody();
        } catch (IOException nobody) {
            // a socket that its holder left behind when it was killed, or one that closes just now
            return new Reply.Nobody();
        }
    }

    private Reply knock(DoorKey key, Request request) throws IOException {
        try (Wire wire = new Wire(SocketChannel.open(UnixDomainSocketAddress.of(key.socket())))) {
            wire.send(Wire.Kind.REQUEST, request.line().getBytes(StandardCharsets.UTF_8));
            if (wire.receive().kind() != Wire.Kind.LET_IN) {
                return new Reply.Nobody();
            }
            return inside(wire);
        }
    }

    private Reply inside(Wire wire) {
        try {
            while (true) {
                Wire.Frame frame = wire.receive();
                switch (frame.kind()) {
                    case OUT -> out.write(frame.content(), 0, frame.content().length);
                    case ERR -> err.write(frame.content(), 0, frame.content().length);
                    case ASK -> tell(wire, new String(frame.content(), StandardCharsets.UTF_8));
                    case END -> {
                        out.flush();
                        err.flush();
                        return new Reply.Ended(Byte.toUnsignedInt(frame.content()[0]));
                    }
                    default -> throw new IOException("unexpected " + frame.kind());
                }
            }
        } catch (IOException lost) {
            return new Reply.Lost();
        }
    }

    private void tell(Wire wire, String prompt) throws IOException {
        Optional<char[]> secret = asking.secret(prompt);
        if (secret.isEmpty()) {
            wire.send(Wire.Kind.NOBODY);
            return;
        }
        ByteBuffer utf8 = StandardCharsets.UTF_8.encode(CharBuffer.wrap(secret.get()));
        byte[] bytes = new byte[utf8.remaining()];
        utf8.get(bytes);
        wire.send(Wire.Kind.SECRET, bytes);
        Arrays.fill(bytes, (byte) 0);
        Arrays.fill(utf8.array(), (byte) 0);
        Arrays.fill(secret.get(), '\0');
    }
}
