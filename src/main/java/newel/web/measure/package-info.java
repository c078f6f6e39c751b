/** Tests in the home: choosing one, how it is run, taking down a result, and what the results say over time. */
package newel.web.measure;
