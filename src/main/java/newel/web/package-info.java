/** HTTP and HTML, and nothing else: one sub-package a feature, mirrored by the template folder of the same name. */
package newel.web;
