/**
 * The page as files: its styles and, in time, its modules, kept as resources under this name. The
 * classes here only hand them out; serving them is the business of the doors.
 */
package strickle.web;
