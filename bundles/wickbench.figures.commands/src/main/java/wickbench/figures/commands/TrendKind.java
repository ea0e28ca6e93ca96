package wickbench.figures.commands;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import wickbench.api.words.Coded;

/** The charts there are, by the names the handbooks give them. */
enum TrendKind implements Coded {
    P,
    P_PRIME,
    C,
    CUSUM,
    EWMA,
    G,
    T;

    /** Reads a chart's name from the command line. */
    static final class Named implements ITypeConverter<TrendKind> {
        @Override
        public TrendKind convert(String code) {
            try {
                return Coded.of(TrendKind.class, code);
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException(e.getMessage());
            }
        }
    }
}
