package wickbench.api.chart;

import org.osgi.annotation.versioning.ProviderType;

/** Draws charts; absent where no bundle can. Any thread may ask, and a screen's own should not: it takes a moment. */
@ProviderType
public interface ChartPainter {

    ChartPicture paint(Chart chart, ChartLook look);
}
