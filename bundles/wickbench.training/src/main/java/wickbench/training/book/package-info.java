/** The training book: what entries say of people, and what follows from it. */
package wickbench.training.book;
