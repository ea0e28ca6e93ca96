package wickbench.ledger.acts;

import wickbench.api.method.MethodId;

/** A sampling point that must be Negative by a method before a line, or what it made, may go. */
public record Point(String place, MethodId method) {}
