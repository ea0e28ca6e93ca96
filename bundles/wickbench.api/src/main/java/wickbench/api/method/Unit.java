package wickbench.api.method;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;

/** The units that methods and results speak in; 1 ppm in food is 1 mg/kg. */
public enum Unit {
    MG_PER_KG("mg/kg", Kind.MASS_FRACTION, 0),
    UG_PER_KG("µg/kg", Kind.MASS_FRACTION, -3),
    MG_PER_L("mg/L", Kind.CONCENTRATION, 0),
    UG_PER_ML("µg/mL", Kind.CONCENTRATION, 0),
    UG_PER_L("µg/L", Kind.CONCENTRATION, -3),
    NG_PER_ML("ng/mL", Kind.CONCENTRATION, -3),
    UG_PER_100_CM2("µg/100 cm²", Kind.AREA_DENSITY),
    UG_PER_SWAB("µg/swab", Kind.PER_SWAB),
    G("g", Kind.MASS),
    ML("mL", Kind.VOLUME),
    CM2("cm²", Kind.AREA),
    CELSIUS("°C", Kind.TEMPERATURE),
    PH("pH", Kind.PURE),
    PIECE("piece", Kind.PURE);

    /** What a unit measures. */
    public enum Kind {
        MASS_FRACTION,
        CONCENTRATION,
        AREA_DENSITY,
        PER_SWAB,
        MASS,
        VOLUME,
        AREA,
        TEMPERATURE,
        PURE
    }

    /** How people without a µ or ² on their keyboard write the same. */
    private static final Map<String, Unit> ALSO = Map.of(
            "ppm", MG_PER_KG,
            "ppb", UG_PER_KG,
            "ug/kg", UG_PER_KG,
            "ug/mL", UG_PER_ML,
            "ug/L", UG_PER_L,
            "ug/100 cm2", UG_PER_100_CM2,
            "ug/100cm2", UG_PER_100_CM2,
            "µg/100cm²", UG_PER_100_CM2,
            "ug/swab", UG_PER_SWAB,
            "cm2", CM2);

    private final String symbol;
    private final Kind kind;
    private final int power;

    Unit(String symbol, Kind kind) {
        this(symbol, kind, 0);
    }

    /** @param power of ten by which it is more than the first unit of its kind */
    Unit(String symbol, Kind kind, int power) {
        this.symbol = symbol;
        this.kind = kind;
        this.power = power;
    }

    public String symbol() {
        return symbol;
    }

    public Kind kind() {
        return kind;
    }

    /** Tells whether a value can be said in other units of its kind; a pH is no number of pieces. */
    public boolean converts() {
        return kind != Kind.PURE;
    }

    /**
     * Returns a value of this unit in another one of its kind, exactly: units of a kind differ by powers of ten.
     *
     * @throws IllegalArgumentException when the other one measures something else
     */
    public BigDecimal convert(BigDecimal value, Unit other) {
        if (this == other) {
            return value;
        }
        if (kind != other.kind || !converts()) {
            throw new IllegalArgumentException(symbol + " is not told in " + other.symbol);
        }
        BigDecimal moved = value.scaleByPowerOfTen(power - other.power);
        return moved.scale() < 0 ? moved.setScale(0) : moved;
    }

    /**
     * Returns the unit written so.
     *
     * @throws IllegalArgumentException when there is none, naming those that exist
     */
    public static Unit ofSymbol(String text) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(text))
                .findFirst()
                .or(() -> java.util.Optional.ofNullable(ALSO.get(text)))
                .orElseThrow(() -> new IllegalArgumentException("expected a unit ("
                        + Arrays.stream(values()).map(Unit::symbol).collect(Collectors.joining(", ")) + "), found '"
                        + text + "'"));
    }
}
