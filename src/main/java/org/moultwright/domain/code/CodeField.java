package org.moultwright.domain.code;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a pattern of codes can take from the animals a code is for. */
public enum CodeField {
    SHORT_YEAR("yy"),
    YEAR("yyyy"),
    BROOD("brood"),
    TAXON("taxon"),
    TRAY("tray");

    private final String key;

    CodeField(String key) {
        this.key = key;
    }

    /** As it is written in a pattern: "{brood}". */
    public String written() {
        return "{" + key + "}";
    }

    String of(CodeFacts facts) {
        return switch (this) {
            case SHORT_YEAR -> padded(facts.year() % 100, 2);
            case YEAR -> padded(facts.year(), 4);
            case BROOD -> facts.broodLetters();
            case TAXON -> facts.taxonLetters();
            case TRAY -> facts.tray();
        };
    }

    private static String padded(int number, int digits) {
        String written = Integer.toString(number);
        return "0".repeat(Math.max(0, digits - written.length())) + written;
    }

    static Optional<CodeField> find(String key) {
        return Arrays.stream(values()).filter(field -> field.key.equals(key)).findFirst();
    }

    static List<String> allWritten() {
        return Arrays.stream(values()).map(CodeField::written).toList();
    }
}
