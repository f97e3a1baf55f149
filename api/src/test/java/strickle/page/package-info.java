/**
 * The page in a real browser, against the real service and store. Each test says what a maker does
 * there; pictures of what they saw lie in {@code target/pictures}.
 */
package strickle.page;
