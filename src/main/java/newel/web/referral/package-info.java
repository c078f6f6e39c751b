/** Referral notes: drafted with the client, printed on one page, sent, and answered; and the case file to download. */
package newel.web.referral;
