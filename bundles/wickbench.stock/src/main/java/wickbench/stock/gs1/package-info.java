/**
 * GS1 element strings, as a scanner sends them or as they are printed in brackets: parsed, never guessed.
 *
 * <p>Source: GS1 General Specifications, §3 (application identifiers), §7.8 (element strings), §7.9 (check digits), §7.12
 * (century). Pure: no clock, no I/O; the year of today is an argument.
 */
@Export
@Version("1.0.0")
package wickbench.stock.gs1;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
