package wickbench.stock.gs1;

/** An identifier with its value, as printed. */
public record Element(Identifier identifier, String value) {}
