package org.moultwright.language;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A translation as text in the PO form of gettext, which every translator's program reads and writes: {@code msgid},
 * {@code msgid_plural}, {@code msgstr}, {@code msgstr[n]}, comments, and a header that names Language and Plural-Forms.
 * Entries marked fuzzy or left empty count as not translated.
 */
public final class TranslationFile {
    private final Map<String, String> texts = new HashMap<>();
    private final Map<String, List<String>> counted = new HashMap<>();
    private final Map<String, StringBuilder> entry = new HashMap<>();
    private Optional<StringBuilder> open = Optional.empty();
    private boolean isFuzzy;

    private TranslationFile() {}

    /**
     * Reads a translation, line by line.
     *
     * @throws IllegalArgumentException if it is not understood, naming the line
     */
    public static Language read(List<String> lines) {
        TranslationFile file = new TranslationFile();
        for (int i = 0; i < lines.size(); i++) {
            file.line(lines.get(i).strip(), i + 1);
        }
        file.close();
        return file.language();
    }

    private void line(String line, int number) {
        if (line.isEmpty() || line.startsWith("#")) {
            if (entry.containsKey("msgstr") || entry.containsKey("msgstr[0]")) {
                close();
            }
            isFuzzy |= line.startsWith("#,") && line.contains("fuzzy");
            return;
        }
        int quote = line.indexOf('"');
        if (quote < 0 || line.length() < quote + 2 || !line.endsWith("\"")) {
            throw notUnderstood(line, number);
        }
        String word = line.substring(0, quote).strip();
        String text = unescaped(line.substring(quote + 1, line.length() - 1));
        if (word.isEmpty()) {
            open.orElseThrow(() -> notUnderstood(line, number)).append(text);
            return;
        }
        if (!word.matches("msgid|msgid_plural|msgstr|msgstr\\[\\d]")) {
            throw notUnderstood(line, number);
        }
        if (word.equals("msgid") && !entry.isEmpty()) {
            close();
        }
        StringBuilder fresh = new StringBuilder(text);
        entry.put(word, fresh);
        open = Optional.of(fresh);
    }

    private void close() {
        String key = said("msgid");
        if (!isFuzzy || key.isEmpty()) {
            if (entry.containsKey("msgid_plural")) {
                List<String> forms = new ArrayList<>();
                for (int i = 0; entry.containsKey("msgstr[" + i + "]"); i++) {
                    forms.add(said("msgstr[" + i + "]"));
                }
                counted.put(said("msgid_plural"), forms);
            } else if (!said("msgstr").isEmpty()) {
                texts.put(key, said("msgstr"));
            }
        }
        entry.clear();
        open = Optional.empty();
        isFuzzy = false;
    }

    private String said(String word) {
        StringBuilder text = entry.get(word);
        return text == null ? "" : text.toString();
    }

    private Language language() {
        Map<String, String> header = new HashMap<>();
        texts.getOrDefault("", "").lines().forEach(line -> {
            int colon = line.indexOf(':');
            if (colon > 0) {
                header.put(
                        line.substring(0, colon).strip(),
                        line.substring(colon + 1).strip());
            }
        });
        texts.remove("");
        String tag = header.getOrDefault("Language", "");
        if (tag.isEmpty()) {
            throw new IllegalArgumentException("The header must name its Language, as in \"Language: de\\n\"");
        }
        Optional<String> plurals = Optional.ofNullable(header.get("Plural-Forms"));
        return new Language(
                Locale.forLanguageTag(tag.replace('_', '-')),
                texts,
                counted,
                plurals.map(PluralRule::of).orElse(PluralRule.ENGLISH));
    }

    private static String unescaped(String text) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign == '\\' && i + 1 < text.length()) {
                i++;
                sign = switch (text.charAt(i)) {
                    case 'n' -> '\n';
                    case 't' -> '\t';
                    default -> text.charAt(i);
                };
            }
            plain.append(sign);
        }
        return plain.toString();
    }

    private static IllegalArgumentException notUnderstood(String line, int number) {
        return new IllegalArgumentException("line " + number + " holds '" + line + "', which is not understood");
    }
}
