/**
 * The window and the contract of its pages.
 *
 * <p>A bundle contributes a {@link wickbench.shell.Page} as a service: a component with the properties
 * {@code wickbench.page=bench} (its id, stable for good) and {@code wickbench.page.rank:Integer=10} (its place in the rail, small
 * first). The page is opened when it is first shown and closed with its bundle, with the window, or to be made anew in another
 * theme or text size.
 */
@Export
@Version("1.0.0")
package wickbench.shell;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
