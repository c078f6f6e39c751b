/**
 * Who the client is, what their home has, what they wish for, and what they answered and scored at intake.
 *
 * <p>Plain records: nothing here decides anything. An answer is yes, no or unknown, and unknown is never read as no. No
 * clock: an age is asked for a given day. Lengths in centimetres (clear space in metres), mass in kilograms, pressure in
 * mmHg, pulse in beats a minute.
 */
package newel.client;
