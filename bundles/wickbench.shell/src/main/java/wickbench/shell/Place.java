package wickbench.shell;

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

    /** Returns the title without its key mark. */
    String name() {
        return page().title().replace("&", "");
    }
}
