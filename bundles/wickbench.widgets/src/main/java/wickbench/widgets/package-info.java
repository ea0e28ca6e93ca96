/**
 * What every page is made of: colours, type and distances, tables, forms, the drawn strip, and work behind the screen.
 *
 * <p>All colours come from a {@link wickbench.widgets.Palette}, all lengths from {@link wickbench.widgets.Metrics}, both through
 * the {@link wickbench.widgets.Theme} of the window. A change of theme or text size makes the pages anew, so a widget reads its
 * theme once. Everything here belongs to the UI thread but for {@link wickbench.widgets.RowSource} and the work given to
 * {@link wickbench.widgets.Jobs}.
 */
@Export
@Version("1.0.0")
package wickbench.widgets;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
