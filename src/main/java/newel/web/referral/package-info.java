/** The referral note as a page to print, and the client's case file to download. */
package newel.web.referral;
