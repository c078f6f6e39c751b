/** The list of clients and each client's own page. */
package newel.web.client;
