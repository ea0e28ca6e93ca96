/**
 * Who else keeps a journal of this site, and the clashes between what stations decided; exports nothing, met through
 * {@code wickbench.api.journal} and {@code wickbench.api.clash}.
 */
package wickbench.stations;
