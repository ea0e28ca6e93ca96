package wickbench.shell;

import java.util.Optional;

/**
 * A page with what its service says of it.
 *
 * @param rank its place in the rail, small first
 */
record Place(String id, int rank, OfferedPage offered) implements Comparable<Place> {

    @Override
    public int compareTo(Place other) {
        int byRank = Integer.compare(rank, other.rank);
        return byRank != 0 ? byRank : id.compareTo(other.id);
    }

    Page page() {
        return offered.page();
    }

    /** Returns the letter that goes to it, in lower case, if its title marks one. */
    Optional<Character> letter() {
        String title = page().title();
        int at = title.indexOf('&');
        return at >= 0 && at + 1 < title.length()
                ? Optional.of(Character.toLowerCase(title.charAt(at + 1)))
                : Optional.empty();
    }

    /** Returns the title without its key mark. */
    String name() {
        return page().title().replace("&", "");
    }
}
