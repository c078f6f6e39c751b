package newel.web;

/**
 * @param id names the line in the log, or empty when there is none to look for
 */
public record ErrorPage(String title, String what, String act, String id) {
    static final ErrorPage NOT_FOUND = plain(
            "There is nothing at this address",
            "The address may be mistyped, or what was here has been removed.",
            "Start again from the list of clients, or from all movements.");
    static final ErrorPage TOO_LARGE = plain(
            "That was too much to take in",
            "One of the boxes holds far more text than a page of notes. Nothing was saved.",
            "Go back, shorten it, and send it again.");
    static final ErrorPage UNREADABLE = plain(
            "That could not be read",
            "What the browser sent is not what this page sends. Nothing was saved.",
            "Go back, load the page again, and send it once more.");
    static final ErrorPage FOREIGN = plain(
            "That came from another site",
            "A page outside Newel tried to change something here. Nothing was changed.",
            "If you pressed nothing yourself, close that other page.");
    static final ErrorPage UNKNOWN_HOST = plain(
            "Newel does not answer to this name",
            "For the safety of your clients it answers only to its own address.",
            "Use the address that Newel printed when it started.");

    static ErrorPage broken(String id) {
        return new ErrorPage(
                "Something went wrong here, not with you",
                "Newel could not finish this. What was saved before is still there.",
                "Go back and try once more. If it happens again, pass on this number:",
                id);
    }

    private static ErrorPage plain(String title, String what, String act) {
        return new ErrorPage(title, what, act, "");
    }
}
