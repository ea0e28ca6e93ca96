package wickbench.console.door;

import java.io.IOException;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A program of another user, run as a process of its own: tries the key, then the socket, and says how far it came. */
final class Stranger {
    private Stranger() {}

    /** @param arguments the folder of the door, and the request that somebody told it, token and all */
    public static void main(String[] arguments) {
        Path door = Path.of(arguments[0]);
        System.out.println(reads(door.resolve("key.json")) ? "key read" : "key closed");
        System.out.println(asked(door.resolve("socket"), arguments[1]));
    }

    private static boolean reads(Path key) {
        try {
            return Files.size(key) >= 0 && Files.readAllBytes(key).length > 0;
        } catch (IOException closed) {
            return false;
        }
    }

    private static String asked(Path socket, String request) {
        try (SocketChannel channel = SocketChannel.open(UnixDomainSocketAddress.of(socket))) {
            return answer(channel, request);
        } catch (IOException closed) {
            return "socket closed: " + closed.getMessage();
        }
    }

    private static String answer(SocketChannel channel, String request) {
        try {
            byte[] line = request.getBytes(StandardCharsets.UTF_8);
            ByteBuffer frame = ByteBuffer.allocate(5 + line.length)
                    .put((byte) 0)
                    .putInt(line.length)
                    .put(line)
                    .flip();
            while (frame.hasRemaining()) {
                channel.write(frame);
            }
            return channel.read(ByteBuffer.allocate(1)) < 0 ? "no answer" : "answered";
        } catch (IOException cutOff) {
            return "no answer";
        }
    }
}
