/** Keeps what methods were verified for, minds what was not, and prints it. */
package wickbench.bench.verify;
