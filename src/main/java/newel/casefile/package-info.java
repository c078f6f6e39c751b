/**
 * The case file: a client without identity as JSON, and the program that Newel would build for it. It serves reports of
 * faults, other programs and tests. Text and trees in and out; no files, no clock.
 */
package newel.casefile;
