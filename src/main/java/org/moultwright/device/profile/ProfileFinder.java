package org.moultwright.device.profile;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.workflow.LineForms.Proposal;

/**
 * Proposes the profiles that explain what was heard from an unknown probe.
 *
 * <p>Each profile is tried under the choices of its settings ({@link Choices}). Those that read no measurement are
 * left out. The better explains more records; of two alike, the better has check values that fit, then does
 * not wait to be asked, then reads temperatures that a room can have, then tells more about each record, then
 * comes first in the order given.
 */
final class ProfileFinder {
    /** Records beyond these would not change the answer. */
    private static final int MOST_RECORDS = 200;

    private static final Comparator<Explanation> BEST_FIRST = Comparator.comparingDouble(
                    Explanation::understoodFraction)
            .thenComparingDouble(Explanation::measuredFraction)
            .thenComparing(Explanation::isChecked)
            .thenComparing(Explanation::isUnasked)
            .thenComparingDouble(Explanation::roomLikeFraction)
            .thenComparingDouble(Explanation::toldPerRecord)
            .reversed();

    private final Collection<LineProfile> profiles;

    ProfileFinder(Collection<LineProfile> profiles) {
        this.profiles = profiles;
    }

    /** The profiles that explain a stream, the best first; of each profile only its best choice. */
    List<Proposal> propose(byte[] stream) {
        return profiles.stream()
                .flatMap(profile -> best(profile, profile.records(stream)).stream())
                .sorted(BEST_FIRST)
                .map(Explanation::proposal)
                .toList();
    }

    private static Optional<Explanation> best(LineProfile profile, List<String> records) {
        List<String> some = records.stream().limit(MOST_RECORDS).toList();
        return Choices.of(profile.settings(), some).stream()
                .map(choice -> Explanation.of(profile.with(choice), some))
                .filter(explanation -> explanation.measuredFraction() > 0)
                .min(BEST_FIRST);
    }

    /**
     * The choices worth a try: every word, every number of a small range, and an address that a record of bytes
     * starts with; of other numbers only the usual one.
     */
    private static final class Choices {
        private static final int MOST = 200;
        private static final int SMALL_RANGE = 10;
        private static final String ADDRESS = "address";

        static List<Map<String, String>> of(List<Setting> settings, List<String> records) {
            List<Map<String, String>> choices = List.of(Map.of());
            for (Setting setting : settings) {
                List<String> values = values(setting, records);
                choices = choices.stream()
                        .flatMap(choice -> values.stream().map(value -> with(choice, setting, value)))
                        .limit(MOST)
                        .toList();
            }
            return choices;
        }

        private static List<String> values(Setting setting, List<String> records) {
            return setting.name().equals(ADDRESS)
                    ? records.stream()
                            .filter(record -> record.matches("[0-9A-F]{4,}"))
                            .map(record -> Integer.parseInt(record.substring(0, 2), 16))
                            .filter(setting::allows)
                            .distinct()
                            .limit(SMALL_RANGE)
                            .map(String::valueOf)
                            .toList()
                    : setting.fewValues(SMALL_RANGE);
        }

        private static Map<String, String> with(Map<String, String> choice, Setting setting, String value) {
            if (value.equals(setting.usual())) {
                return choice;
            }
            Map<String, String> more = new LinkedHashMap<>(choice);
            more.put(setting.name(), value);
            return more;
        }
    }
}
