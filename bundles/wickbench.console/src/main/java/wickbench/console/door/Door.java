package wickbench.console.door;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;

/**
 * Answers other programs of the same user for as long as this one holds the home.
 *
 * <p>Closing lets commands run to their end: a thread that is interrupted while it writes would close the file under it.
 */
public final class Door implements AutoCloseable {
    /** How many callers are answered at once; others wait in the queue. */
    private static final int CALLERS = 4;

    /** How long a caller who does not read may hold up the end. */
    private static final int PATIENCE_SECONDS = 5;

    private final DoorFolder folder;
    private final DoorKey key;
    private final ServerSocketChannel server;
    private final Answering answering;
    private final Set<Wire> visits = ConcurrentHashMap.newKeySet();
    private final ExecutorService workers = Executors.newFixedThreadPool(CALLERS, Door::thread);

    private Door(DoorFolder folder, DoorKey key, ServerSocketChannel server, Answering answering) {
        this.folder = folder;
        this.key = key;
        this.server = server;
        this.answering = answering;
    }

    /**
     * Opens the door of a home that this program holds.
     *
     * @throws IOException when the folder takes no socket, or is not this user's alone
     */
    public static Door open(Path home, Answering answering) throws IOException {
        DoorFolder folder = new DoorFolder(home);
        DoorKey key = DoorKey.cut(folder.prepare());
        ServerSocketChannel server = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
        try {
            server.bind(UnixDomainSocketAddress.of(key.socket()));
            folder.keep(key);
        } catch (IOException e) {
            server.close();
            folder.clear(key.socket());
            throw e;
        }
        Door door = new Door(folder, key, server, answering);
        thread(door::listen).start();
        return door;
    }

    private void listen() {
        while (server.isOpen()) {
            try {
                Wire caller = new Wire(server.accept());
                visits.add(caller);
                workers.execute(() -> receive(caller));
            } catch (IOException | RejectedExecutionException closed) {
                // the door was closed; whoever came last finds nobody and opens the home themself
                break;
            }
        }
    }

    private void receive(Wire caller) {
        try (caller) {
            if (caller.isThisUsers()) {
                new Visit(caller, key.token(), answering).answer();
            }
        } catch (IOException gone) {
            // the caller went away: what it asked for was done or not begun, and nobody is left to be told
        } finally {
            visits.remove(caller);
        }
    }

    /** Lets nobody in any more and waits until those inside are answered. */
    @Override
    public void close() throws IOException {
        folder.clear(key.socket());
        server.close();
        workers.shutdown();
        for (Wire visit : visits) {
            visit.leave();
        }
        if (!finished(PATIENCE_SECONDS)) {
            for (Wire visit : visits) {
                visit.close();
            }
            // what still runs waits for nobody any more, and ends by itself
            finished(Long.MAX_VALUE);
        }
    }

    private boolean finished(long seconds) {
        try {
            return workers.awaitTermination(seconds, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "door");
        thread.setDaemon(true);
        return thread;
    }
}
