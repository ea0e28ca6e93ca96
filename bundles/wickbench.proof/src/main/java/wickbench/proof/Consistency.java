package wickbench.proof;

import java.util.ArrayList;
import java.util.List;

/**
 * A proof that a tree begins with all of an older one: nothing was changed or taken away, only added (RFC 9162 §2.1.4).
 *
 * @param older leaves of the older tree
 * @param newer leaves of the newer one
 */
public record Consistency(long older, long newer, List<Digest> path) {
    public Consistency {
        path = List.copyOf(path);
    }

    /** Tells whether this leads from the root of the older tree to that of the newer, by the steps of RFC 9162 §2.1.4.2. */
    public boolean proves(Digest olderRoot, Digest newerRoot) {
        if (older < 0 || older > newer) {
            return false;
        }
        if (older == newer) {
            return path.isEmpty() && olderRoot.equals(newerRoot);
        }
        if (older == 0) {
            // every tree begins with the empty one; the steps of the RFC begin at one leaf
            return path.isEmpty() && olderRoot.equals(Digest.of(new TreeHash().empty()));
        }
        return climbs(olderRoot, newerRoot);
    }

    private boolean climbs(Digest olderRoot, Digest newerRoot) {
        List<Digest> steps = new ArrayList<>(path);
        if (Long.bitCount(older) == 1) {
            // a whole subtree of the newer tree, whose hash need not be sent
            steps.add(0, olderRoot);
        }
        if (steps.isEmpty()) {
            return false;
        }
        Climb climb = new Climb(older - 1, newer - 1);
        climb.toWholeSubtree();
        byte[] old = steps.get(0).bytes();
        byte[] now = old;
        for (Digest step : steps.subList(1, steps.size())) {
            if (climb.atTop()) {
                return false;
            }
            if (climb.fromRight()) {
                old = climb.join(step.bytes(), old);
                now = climb.join(step.bytes(), now);
            } else {
                now = climb.join(now, step.bytes());
            }
            climb.up();
        }
        return climb.atTop()
                && Digest.of(old).equals(olderRoot)
                && Digest.of(now).equals(newerRoot);
    }
}
