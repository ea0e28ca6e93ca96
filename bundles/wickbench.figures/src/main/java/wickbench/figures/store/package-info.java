/**
 * Storing and ordering: how warm a store really was, what warmth costs in shelf life, when and how much to order.
 *
 * <p>Temperatures in degrees Celsius, heats of activation in kJ/mol. An input out of range ends with
 * {@link wickbench.figures.NoAnswer}.
 */
@Export
@Version("1.0.0")
package wickbench.figures.store;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
