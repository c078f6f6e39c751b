/**
 * SQL, and nothing else: one store a feature, over one SQLite file. Keys are text UUIDs made here, times are ISO-8601
 * text in UTC, lists and answers are JSON text, so that the same SQL runs on PostgreSQL.
 */
package newel.store;
