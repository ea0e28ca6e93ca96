package wickbench.stock.log;

/** A range of temperatures to be kept, °C, both ends included. */
public record Range(double low, double high) {}
