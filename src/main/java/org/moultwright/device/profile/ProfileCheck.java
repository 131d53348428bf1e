package org.moultwright.device.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.moultwright.language.Texts;
import org.moultwright.workflow.ProfileProblem;

/**
 * A profile's text, checked as far as it goes: all that is wrong with the text, else every test line of its own
 * that it reads wrongly, else whether its patterns take too long.
 *
 * @param profile the profile, if it may be used
 * @param code the code the text says, whether or not it may be used
 * @param title the title the text says, empty if it says none
 * @param problems all that is wrong, in order of lines; none if it may be used
 */
record ProfileCheck(Optional<LineProfile> profile, Optional<String> code, String title, List<ProfileProblem> problems) {

    static ProfileCheck of(List<String> text) {
        ProfileReader.Read read = ProfileReader.read(text, Map.of());
        List<ProfileProblem> problems = read.profile().map(ProfileCheck::tried).orElse(read.problems());
        return new ProfileCheck(
                read.profile().filter(profile -> problems.isEmpty()),
                value("code: ", text),
                value("title: ", text).orElse(""),
                problems);
    }

    /** The same, with a problem if its code is one of these. */
    ProfileCheck withCodeNotIn(Set<String> taken) {
        if (code.filter(taken::contains).isEmpty()) {
            return this;
        }
        List<ProfileProblem> all = new ArrayList<>(problems);
        all.add(new ProfileProblem(
                0, Texts.say("the code '{0}' is taken by another profile; choose another", code.get())));
        return new ProfileCheck(Optional.empty(), code, title, all);
    }

    private static List<ProfileProblem> tried(LineProfile profile) {
        return PatternTrial.isQuick(profile)
                ? profile.failures()
                : List.of(
                        new ProfileProblem(
                                0,
                                Texts.say(
                                        "the patterns take too long on parts of the test lines; use fewer '?', '*' and '|' in a row")));
    }

    private static Optional<String> value(String key, List<String> text) {
        return text.stream()
                .filter(line -> line.startsWith(key))
                .map(line -> line.substring(key.length()).strip())
                .findFirst();
    }
}
