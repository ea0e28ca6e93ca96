package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import java.util.UUID;

/** Keeps what the shared folder holds of this station up to date, and finds out when another machine writes under its name. */
final class Publishing {
    private static final String FORKED = "own.forked";
    private final Host host;
    private final ShareFolder share;
    private final StationFolder from;
    private final StationFolder to;
    private Publisher publisher;
    private final WriterClaim claim;
    private boolean refused;
    private boolean waiting;
    private long published;
    private Optional<String> trouble = Optional.empty();

    Publishing(Host host, ShareFolder share, UUID run) {
        this.host = host;
        this.share = share;
        from = host.own().folder();
        to = share.of(from.station());
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

    /** Tells whether entries of this station itself are still to come back. */
    boolean waiting() {
        return waiting;
    }

    /** Shows the others what is new; returns whether this station's folder was made for it, and so is empty but for the journal. */
    boolean publish() throws IOException {
        if (refused) {
            return false;
        }
        boolean made = makeFolder();
        Host.Shown shown = host.seal();
        Publisher.There there = publisher.compare(shown);
        if (there == Publisher.There.MORE && host.restored()) {
            takeBack(shown);
        } else if (there != Publisher.There.OURS) {
            refuse(there == Publisher.There.MORE ? "own.older" : otherHistory(), shown);
        } else {
            publish(shown);
        }
        return made;
    }

    private void publish(Host.Shown shown) throws IOException {
        WriterClaim.Answer answer = claim.ask(System.nanoTime());
        if (answer == WriterClaim.Answer.TAKEN) {
            refuse("own.taken", shown);
        } else if (answer == WriterClaim.Answer.WRITE) {
            publisher.publish(shown);
            published = shown.seal().map(Seal::size).orElse(0L);
            host.hold("");
            waiting = false;
        }
    }

    /** Takes into a home that was made from a back-up what came after it, once it is sure that nobody else goes on with that. */
    private void takeBack(Host.Shown shown) throws IOException {
        waiting = true;
        host.hold(Say.words("own.waiting", from.station(), share.folder()));
        WriterClaim.Answer answer = claim.ask(System.nanoTime());
        if (answer == WriterClaim.Answer.TAKEN) {
            refuse("own.taken", shown);
        } else if (answer == WriterClaim.Answer.WRITE) {
            host.takeBack(to);
        }
    }

    /**
     * Makes this station's folder where it is missing; one that somebody removed comes back with all that is signed.
     *
     * <p>Only beside the mark of the share, so never where a share that went away was mounted.
     */
    private boolean makeFolder() throws IOException {
        if (Files.isDirectory(to.folder())) {
            return false;
        }
        share.reach();
        host.disk().makeFolder(to.folder());
        publisher = new Publisher(host.disk(), from, to);
        return true;
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
        return Beginning.of(share.of(from.station()))
                        .founded()
                        .filter(there -> !there.key().fingerprint().hex().equals(key))
                        .isPresent()
                ? "own.name"
                : FORKED;
    }

    void release() throws IOException {
        claim.release();
    }
}
