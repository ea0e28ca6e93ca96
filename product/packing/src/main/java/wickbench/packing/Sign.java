package wickbench.packing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;

/** The sign of the program, a bench and liquid that climbs a wick, as a picture for menus: white on a tile. */
final class Sign {

    /** Lines on a field of 24, as on the desktop's bar. */
    private static final double[][] LINES = {
        {2, 18, 22, 18}, {5, 18, 5, 22}, {19, 18, 19, 22}, {12, 18, 12, 9}, {12, 9, 9, 5, 12, 2, 15, 5, 12, 9}
    };

    private static final double FIELD = 24;
    /** Kept free around the lines, in the same measure. */
    private static final double MARGIN = 5;

    private static final double SIDE = FIELD + 2 * MARGIN;
    private static final double CORNER = 7;
    private static final double STROKE = 2;
    private static final int TILE = 0x00629C;

    private Sign() {}

    static String svg() {
        String lines = Arrays.stream(LINES).map(Sign::polyline).collect(Collectors.joining("\n    "));
        return """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="%1$s %1$s %2$s %2$s" width="256" height="256">
              <rect x="%1$s" y="%1$s" width="%2$s" height="%2$s" rx="%3$s" fill="#%4$06X"/>
              <g fill="none" stroke="#FFFFFF" stroke-width="%5$s" stroke-linecap="round" stroke-linejoin="round">
                %6$s
              </g>
            </svg>
            """.formatted(-MARGIN, SIDE, CORNER, TILE, STROKE, lines);
    }

    static void png(Path file, int side) throws IOException {
        var image = new BufferedImage(side, side, BufferedImage.TYPE_INT_ARGB);
        var pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(side / SIDE, side / SIDE);
        pen.translate(MARGIN, MARGIN);
        pen.setColor(new Color(TILE));
        pen.fill(new RoundRectangle2D.Double(-MARGIN, -MARGIN, SIDE, SIDE, 2 * CORNER, 2 * CORNER));
        pen.setColor(Color.WHITE);
        pen.setStroke(new BasicStroke((float) STROKE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (double[] line : LINES) {
            pen.draw(shape(line));
        }
        pen.dispose();
        try (var out = Files.newOutputStream(file)) {
            ImageIO.write(image, "png", out);
        }
    }

    private static Path2D shape(double[] line) {
        var shape = new Path2D.Double();
        shape.moveTo(line[0], line[1]);
        for (int i = 2; i < line.length; i += 2) {
            shape.lineTo(line[i], line[i + 1]);
        }
        return shape;
    }

    private static String polyline(double[] line) {
        return Arrays.stream(line)
                .mapToObj(Double::toString)
                .collect(Collectors.joining(" ", "<polyline points=\"", "\"/>"));
    }
}
