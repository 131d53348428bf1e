package org.moultwright.device.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import org.moultwright.language.Texts;
import org.moultwright.workflow.ProfileProblem;

/**
 * The keys of a profile's text with the values each has, in order, and a collection of all that is wrong with
 * them, so that a keeper sees every problem at once.
 */
final class ProfileText {
    static final Set<String> KEYS = new TreeSet<>(Set.of(
            "code",
            "title",
            "port",
            "framing",
            "longest",
            "decode",
            "poll",
            "setting",
            "channel",
            "checksum",
            "disconnected",
            "power-on",
            "stuck-after",
            "let",
            "ignore",
            "restart",
            "reject",
            "record",
            "fault",
            "test"));

    private final Map<String, List<Entry>> entries = new LinkedHashMap<>();
    private final List<ProfileProblem> problems = new ArrayList<>();

    /** A value and the line it stands on. */
    record Entry(int lineNumber, String value) {}

    ProfileText(List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank() && !lines.get(i).startsWith("#")) {
                add(i + 1, lines.get(i));
            }
        }
    }

    private void add(int lineNumber, String line) {
        int colon = line.indexOf(": ");
        String key = line.substring(0, Math.max(colon, 0));
        if (KEYS.contains(key)) {
            Entry entry = new Entry(lineNumber, line.substring(colon + 2).strip());
            entries.computeIfAbsent(key, any -> new ArrayList<>()).add(entry);
        } else {
            problem(lineNumber, Texts.say("'{0}' does not start with one of {1} and a colon", line, KEYS));
        }
    }

    /** Everything wrong so far, in order of lines. */
    List<ProfileProblem> problems() {
        return problems.stream()
                .sorted(Comparator.comparingInt(ProfileProblem::lineNumber))
                .toList();
    }

    void problem(int lineNumber, String sentence) {
        problems.add(new ProfileProblem(lineNumber, sentence));
    }

    /** All values of a key; those that cannot be read become problems. */
    <T> List<T> all(String key, Function<Entry, T> reading) {
        return entries.getOrDefault(key, List.of()).stream()
                .flatMap(entry -> read(entry, reading).stream())
                .toList();
    }

    void each(String key, Consumer<String> reading) {
        all(key, entry -> {
            reading.accept(entry.value());
            return entry;
        });
    }

    /** The value of a key that may be there once. */
    <T> Optional<T> atMostOne(String key, Function<String, T> reading) {
        List<Entry> found = entries.getOrDefault(key, List.of());
        if (found.size() > 1) {
            problem(
                    found.get(1).lineNumber(),
                    Texts.say("'{0}' is there {1} times but may be there once", key, found.size()));
        }
        return found.isEmpty() ? Optional.empty() : read(found.get(0), entry -> reading.apply(entry.value()));
    }

    /** The value of a key that must be there once. */
    <T> Optional<T> one(String key, Function<String, T> reading) {
        if (!entries.containsKey(key)) {
            problem(0, Texts.say("'{0}: ' is missing", key));
        }
        return atMostOne(key, reading);
    }

    private <T> Optional<T> read(Entry entry, Function<Entry, T> reading) {
        try {
            return Optional.of(reading.apply(entry));
        } catch (IllegalArgumentException e) {
            problem(entry.lineNumber(), String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }
}
