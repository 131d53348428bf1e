package org.moultwright.boot;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A page written for keepers, and what in it can be held against the program. */
record GuidePage(Path file, String text) {
    private static final Pattern CONSOLE = Pattern.compile("```console\\R(.*?)```", Pattern.DOTALL);
    private static final Pattern BOLD = Pattern.compile("\\*\\*(.+?)\\*\\*", Pattern.DOTALL);
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("^#+ (.+)$", Pattern.MULTILINE);
    private static final Pattern KEY_ROW = Pattern.compile("^\\| (`[^|]+` \\| [^|]+) \\|$", Pattern.MULTILINE);
    private static final Pattern PROMPT = Pattern.compile(Pattern.quote("$ moultwright "));
    private static final Pattern LINE_END = Pattern.compile("\\R");
    private static final Pattern SPACE = Pattern.compile(" ");

    static GuidePage of(Path file) {
        try {
            return new GuidePage(file, Files.readString(file));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** All pages in a folder and below it. */
    static List<GuidePage> in(Path folder) {
        try (Stream<Path> inside = Files.walk(folder)) {
            return inside.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .map(GuidePage::of)
                    .toList();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** Commands in the order of the page, each with the answer written below it. */
    List<Example> examples() {
        List<Example> examples = new ArrayList<>();
        for (String block : found(CONSOLE, text)) {
            for (String part : PROMPT.split(block, -1)) {
                if (!part.isBlank()) {
                    String[] lines = LINE_END.split(part, 2);
                    examples.add(new Example(List.of(SPACE.split(lines[0], -1)), lines[1].strip()));
                }
            }
        }
        return examples;
    }

    /** What the page says stands on a screen. */
    List<String> wordsOnScreen() {
        return found(BOLD, text).stream()
                .map(words -> words.replaceAll("\\s+", " "))
                .toList();
    }

    List<String> links() {
        return found(LINK, text);
    }

    List<String> headings() {
        return found(HEADING, text);
    }

    /** The rows of the table of keys, as they are written. */
    List<String> keys() {
        int table = text.indexOf("## Keys");
        return table < 0 ? List.of() : found(KEY_ROW, text.substring(table));
    }

    private static List<String> found(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map((MatchResult result) -> result.group(1))
                .toList();
    }

    /** A command without the program's name, and what it answers. */
    record Example(List<String> arguments, String answer) {}
}
