package newel.web.referral;

import newel.referral.Letter;

/** @param sent it stands as it went out; before, it is a draft */
public record LetterPage(Letter letter, boolean sent, String back) {}
