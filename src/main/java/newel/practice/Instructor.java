package newel.practice;

/**
 * Who signs the papers.
 *
 * @param qualification empty when not given
 * @param registration number in a professional register, empty when not given
 */
public record Instructor(String name, String role, String qualification, String registration) {
    /** In one line: "Rosa Tallis, exercise instructor, Level 4, register 1234". */
    public String line() {
        return name + ", " + role + (qualification.isEmpty() ? "" : ", " + qualification)
                + (registration.isEmpty() ? "" : ", registration " + registration);
    }
}
