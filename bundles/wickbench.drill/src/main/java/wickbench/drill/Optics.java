package wickbench.drill;

import wickbench.figures.Inputs;

/**
 * How strips look on the screen, as shares of light.
 *
 * @param red red light of the bare membrane, 0 to 1
 * @param green green light
 * @param blue blue light
 * @param dye how the light that a line takes is spread over the colours; only the ratios count
 * @param grain spread (standard deviation) of the membrane's light from point to point
 * @param mottle spread of the light between larger patches
 * @param gradient by how much one end of the window is brighter than its middle, from uneven lighting
 * @param soft spread of a line's edge, in thicknesses of the line
 * @param control contrast of the control line
 */
public record Optics(
        double red,
        double green,
        double blue,
        Dye dye,
        double grain,
        double mottle,
        double gradient,
        double soft,
        double control) {
    /**
     * A white membrane with a line of colloidal gold, which takes green light most: the colour is the optics of gold (absorption at 520
     * to 540 nm), the amounts are ours, chosen by looking.
     */
    public static final Optics USUAL =
            new Optics(0.76, 0.76, 0.73, new Dye(0.30, 1, 0.55), 0.012, 0.008, 0.04, 0.15, 0.35);

    /** Light beyond this is cut off by the screen. */
    private static final double BRIGHTEST = 1;

    /** Light that a line takes of each colour. */
    public record Dye(double red, double green, double blue) {
        public Dye {
            Inputs.notNegative("red", red);
            Inputs.notNegative("green", green);
            Inputs.notNegative("blue", blue);
        }
    }

    public Optics {
        Inputs.within("grain", grain, 0, 0.05);
        Inputs.within("mottle", mottle, 0, 0.05);
        Inputs.within("gradient", gradient, 0, 0.15);
        Inputs.within("soft", soft, 0.01, 1);
        Inputs.within("control", control, 0, StripPicture.MOST);
        // the brightest point of texture and light must not be cut off
        double most = BRIGHTEST / ((1 + gradient) * (1 + Texture.REACH * (grain + mottle)));
        Inputs.within("red", red, 0.01, most);
        Inputs.within("green", green, 0.01, most);
        Inputs.within("blue", blue, 0.01, most);
    }

    /** Red, green and blue of the bare membrane. */
    double[] membrane() {
        return new double[] {red, green, blue};
    }

    /** What a line takes of red, green and blue, so that it takes as much of the luminance as its contrast says. */
    double[] taken() {
        double whole = Srgb.luminance(red, green, blue);
        double part = Srgb.luminance(red * dye.red(), green * dye.green(), blue * dye.blue());
        double scale = whole / part;
        return new double[] {dye.red() * scale, dye.green() * scale, dye.blue() * scale};
    }
}
