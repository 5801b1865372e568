package org.garboard.survey;

/**
 * One thing that a surveyor found, in the surveyor's words.
 *
 * @param number by which notes and photographs call it
 * @param place where
 * @param words what was found
 * @param severity as the surveyor grades it; empty where it is not graded
 * @param action what is to be done; empty where nothing is told
 * @param photo reference to a photograph; empty where there is none
 * @param date on which it was found, ISO 8601; empty where it is not told
 */
public record SurveyFinding(String number, SurveyPlace place, String words, String severity, String action, String photo, String date) {
}
