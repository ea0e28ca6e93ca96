/**
 * Install sets: which are there, and how one is added or removed while the program runs; exports nothing, met through
 * {@code wickbench.api.part}.
 */
package wickbench.parts;
