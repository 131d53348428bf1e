package org.moultwright.language;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * One language the desk speaks. The English text is the key; what a language has no words for stays English.
 *
 * @param locale whose language it is
 * @param texts what each English text is in this language
 * @param counted the forms of texts with a number in them, by their English plural, in the order of {@code plurals}
 * @param plurals which form a number takes
 */
public record Language(
        Locale locale, Map<String, String> texts, Map<String, List<String>> counted, PluralRule plurals) {
    /** What the program is written in; needs no file. */
    public static final Language ENGLISH = new Language(Locale.UK, Map.of(), Map.of(), PluralRule.ENGLISH);

    public Language {
        texts = Map.copyOf(texts);
        counted = Map.copyOf(counted);
    }

    String of(String text) {
        return texts.isEmpty() ? text : texts.getOrDefault(text, text);
    }

    String of(long count, String one, String many) {
        List<String> forms = counted.getOrDefault(many, List.of());
        int form = plurals.of(count);
        if (form < forms.size() && !forms.get(form).isEmpty()) {
            return forms.get(form);
        }
        return count == 1 ? one : many;
    }
}
