package wickbench.bench.run;

/** Something that happened, and when. */
public record Noted(Moment at, RunEvent event) {}
