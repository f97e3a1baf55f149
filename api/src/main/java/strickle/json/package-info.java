/**
 * Reading and writing of studio books, plans and messages as JSON (RFC 8259): the only place in the
 * program that knows Jackson. Whoever gives it a broken or wrong file gets every fault at once,
 * each with its JSON path (RFC 9535), the value found and what would be right.
 */
package strickle.json;
