package wickbench.journal;

import java.io.IOException;
import java.util.Optional;
import java.util.UUID;

/** Keeps what the shared folder holds of this station up to date, and finds out when another machine writes under its name. */
final class Publishing {
    private static final String FORKED = "own.forked";
    private final Host host;
    private final ShareFolder share;
    private final StationFolder from;
    private final Publisher publisher;
    private final WriterClaim claim;
    private boolean made;
    private boolean refused;
    private long published;
    private Optional<String> trouble = Optional.empty();

    Publishing(Host host, ShareFolder share, UUID run) {
        this.host = host;
        this.share = share;
        from = host.own().folder();
        StationFolder to = share.of(from.station());
        publisher = new Publisher(host.disk(), from, to);
        claim = new WriterClaim(host.disk(), to.folder(), host.layout().home(), run);
    }

    /** Returns what stands in the way; empty when nothing does. */
    Optional<String> trouble() {
        return trouble;
    }

    /** Returns how many entries the others can see. */
    long published() {
        return published;
    }

    void publish() throws IOException {
        if (refused) {
            return;
        }
        makeFolder();
        Host.Shown shown = host.seal();
        Publisher.There there = publisher.compare(shown);
        if (there != Publisher.There.OURS) {
            refuse(there == Publisher.There.MORE ? "own.older" : otherHistory(), shown);
            return;
        }
        WriterClaim.Answer answer = claim.ask(System.nanoTime());
        if (answer == WriterClaim.Answer.TAKEN) {
            refuse("own.taken", shown);
        } else if (answer == WriterClaim.Answer.WRITE) {
            publisher.publish(shown);
            published = shown.seal().map(Seal::size).orElse(0L);
        }
    }

    /** Makes this station's folder once: one that is missing later went with the whole share, and is not made where that was mounted. */
    private void makeFolder() throws IOException {
        if (!made) {
            share.reach();
            host.disk().makeFolder(share.of(from.station()).folder());
            made = true;
        }
    }

    /** Stops recording under a name that another machine uses, and lays what was recorded here beside as evidence. */
    private void refuse(String key, Host.Shown shown) throws IOException {
        String why = Say.words(key, from.station(), share.folder());
        boolean more = shown.seal().filter(seal -> seal.size() > published).isPresent();
        if (more && (key.equals(FORKED) || key.equals("own.taken"))) {
            String root = shown.seal().get().root().hex();
            StationFolder branch = share.branch(from.station(), root);
            host.disk().makeFolder(branch.folder());
            new Publisher(host.disk(), from, branch).publish(shown);
        }
        refused = true;
        trouble = Optional.of(why);
        host.refuse(why);
    }

    /** Tells apart a copy of this station that went on elsewhere, and a stranger of the same name. */
    private String otherHistory() throws IOException {
        String key = host.own().founded().key().fingerprint().hex();
        return Follower.founded(share.of(from.station()))
                        .filter(there -> !there.key().fingerprint().hex().equals(key))
                        .isPresent()
                ? "own.name"
                : FORKED;
    }

    void release() throws IOException {
        claim.release();
    }
}
