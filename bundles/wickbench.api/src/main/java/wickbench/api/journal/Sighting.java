package wickbench.api.journal;

/**
 * How much of another station's journal a station had taken in when it recorded last, as its own journal says ({@link Seen}).
 *
 * @param station who says so
 * @param other of whose journal
 * @param size how many entries
 */
public record Sighting(StationId station, StationId other, long size) {}
