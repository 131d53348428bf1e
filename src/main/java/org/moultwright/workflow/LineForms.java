package org.moultwright.workflow;

import java.util.List;
import java.util.Optional;

/**
 * The forms of line that probes may speak: those that come with the program, and those the keeper wrote.
 */
public interface LineForms {

    /** Every form there is, usable or not, those of the program first. */
    List<Form> forms();

    /** What a profile's text declares, and all that is wrong with it; its own test lines are tried. */
    Checked check(List<String> text);

    /**
     * The forms that explain what was heard from an unknown probe, the best first.
     *
     * @param heard the bytes as they came
     */
    List<Proposal> propose(byte[] heard);

    /** The text of a form, to be read or to start another from; empty if there is none of that code. */
    List<String> text(String code);

    /**
     * Keeps a profile of the keeper's; on disk when this returns, and usable at once. One of the keeper's with the
     * same code is replaced. A text with problems is not kept.
     *
     * @throws java.io.UncheckedIOException if it cannot be written
     */
    Checked save(List<String> text);

    /**
     * A form of line.
     *
     * @param code by which it is chosen
     * @param title what it is called
     * @param source where it comes from: empty for one of the program's, else the name of the keeper's file
     * @param problems all that is wrong with it; with any, it cannot be used
     */
    record Form(String code, String title, Optional<String> source, List<ProfileProblem> problems) {}

    /**
     * What a profile's text declares.
     *
     * @param code the profile's code, if the text says it
     * @param problems all that is wrong; with none it can be used
     */
    record Checked(Optional<String> code, List<ProfileProblem> problems) {}

    /**
     * A form that explains what was heard.
     *
     * @param profile the words by which it is chosen, settings included
     * @param title what it is called
     * @param understoodFraction how much of what was heard it explains, from above 0 to 1
     * @param reads what it would have read
     */
    record Proposal(String profile, String title, double understoodFraction, List<WouldRead> reads) {}

    /**
     * What a record would have been read as.
     *
     * @param rawLine the record as it would have been kept
     * @param temperatureCelsius in °C, NaN where it is no measurement
     * @param humidityPercent in %, NaN where it tells none
     * @param fault why it is no measurement, empty where it is one
     * @param sensor who says it, empty where it does not tell
     */
    record WouldRead(String rawLine, double temperatureCelsius, double humidityPercent, String fault, String sensor) {}
}
