/**
 * The command line: plan, promise, bound, price, check and demo, each a small class that reads what
 * was asked, lets the other packages think, and prints the answer in a maker's words. Whatever goes
 * wrong becomes one plain line for each fault and an exit code; nobody is shown a stack trace.
 */
package strickle.cli;
