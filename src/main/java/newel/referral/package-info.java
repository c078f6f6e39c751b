/**
 * When a question is no longer the instructor's, and the note that hands it over: situation, background as told, findings,
 * one question, what goes on meanwhile. It asks for advice and names no disease that a clinician has not
 * named.
 */
package newel.referral;
