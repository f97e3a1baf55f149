/**
 * What recorded weeks say of a book: how long tasks really take, how many pieces turn out and how
 * much is weighed out, each as an estimate with its band beside the book's own number. Nothing is
 * taken over unless somebody asks.
 */
package strickle.plan.learn;
