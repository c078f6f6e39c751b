/**
 * When a question is no longer the instructor's, the note that hands it over, and what becomes of it: drafted, sent, answered.
 *
 * <p>A note stands in the order situation, background, findings, one question. It holds who the client is and why it is
 * written, and beyond that only what the instructor ticked: no more than the reader needs. Consent is asked first; only an
 * emergency may be recorded without it, with the reason. It asks for advice and names no disease that was not told or logged.
 * What was sent is kept word for word.
 */
package newel.referral;
