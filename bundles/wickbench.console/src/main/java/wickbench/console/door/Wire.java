package wickbench.console.door;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.SocketChannel;

/**
 * One connection, as frames: a kind (one byte), a length (four bytes), so many bytes.
 *
 * <p>Any thread may send; one receives.
 */
final class Wire implements AutoCloseable {
    private static final int HEAD = 5;
    private static final int LONGEST = 1 << 20;

    /** What a frame carries. */
    enum Kind {
        /** Caller: a {@link Request}. */
        REQUEST,
        /** Holder: the request was let in; from here on something may have been done. */
        LET_IN,
        OUT,
        ERR,
        /** Holder: ask the person for a secret, with this prompt. */
        ASK,
        SECRET,
        /** Caller: there is nobody to ask. */
        NOBODY,
        /** Holder: the exit code, in one byte. */
        END
    }

    record Frame(Kind kind, byte[] content) {}

    private final SocketChannel channel;
    private final Object sending = new Object();
    private boolean leaving;
    private boolean waiting;

    Wire(SocketChannel channel) {
        this.channel = channel;
    }

    /** Tells whether the other end is a program of the same user. */
    boolean isThisUsers() throws IOException {
        return Peer.isThisUser(channel);
    }

    void send(Kind kind, byte... content) throws IOException {
        send(kind, content, 0, content.length);
    }

    /** Sends one frame or more, as many as the bytes need. */
    void send(Kind kind, byte[] bytes, int from, int length) throws IOException {
        int sent = 0;
        do {
            int part = Math.min(LONGEST, length - sent);
            sendFrame(kind, ByteBuffer.wrap(bytes, from + sent, part));
            sent += part;
        } while (sent < length);
    }

    private void sendFrame(Kind kind, ByteBuffer content) throws IOException {
        ByteBuffer start = ByteBuffer.allocate(HEAD)
                .put((byte) kind.ordinal())
                .putInt(content.remaining())
                .flip();
        ByteBuffer[] frame = {start, content};
        synchronized (sending) {
            while (content.hasRemaining() || start.hasRemaining()) {
                channel.write(frame);
            }
        }
    }

    /** Waits for the next frame. */
    Frame receive() throws IOException {
        await();
        try {
            ByteBuffer start = filled(ByteBuffer.allocate(HEAD));
            int kind = start.get();
            int length = start.getInt();
            if (kind < 0 || kind >= Kind.values().length || length < 0 || length > LONGEST) {
                throw new IOException("not a frame: kind " + kind + ", length " + length);
            }
            return new Frame(
                    Kind.values()[kind], filled(ByteBuffer.allocate(length)).array());
        } finally {
            awaited();
        }
    }

    private ByteBuffer filled(ByteBuffer buffer) throws IOException {
        while (buffer.hasRemaining()) {
            if (channel.read(buffer) < 0) {
                throw new EOFException();
            }
        }
        return buffer.flip();
    }

    /** Waits for the other side no longer: ends the connection now if it does, else as soon as it would. */
    synchronized void leave() throws IOException {
        leaving = true;
        if (waiting) {
            channel.close();
        }
    }

    private synchronized void await() throws ClosedChannelException {
        if (leaving) {
            throw new ClosedChannelException();
        }
        waiting = true;
    }

    private synchronized void awaited() {
        waiting = false;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
