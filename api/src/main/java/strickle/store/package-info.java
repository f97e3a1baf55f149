/**
 * Keeps studios in a database: what they hold, what was changed and by whom, snapshots and plans.
 * The only place that knows SQL; the same tables and statements serve SQLite and PostgreSQL.
 */
package strickle.store;
