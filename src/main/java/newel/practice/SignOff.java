package newel.practice;

import java.time.LocalDate;

/**
 * One rule, signed off for this practice.
 *
 * @param rule the rule's id
 * @param signed the text that was read and signed, {@link newel.source.Statement#signed()}
 * @param who the clinician's name
 */
public record SignOff(String rule, String signed, String who, String role, LocalDate on) {}
