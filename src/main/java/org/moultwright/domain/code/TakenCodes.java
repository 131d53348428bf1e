package org.moultwright.domain.code;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The codes that stand on pots, whoever gave them and by whatever pattern. Two that differ in hyphens, case or look-alikes
 * only are one.
 */
public final class TakenCodes {
    private final Set<String> texts;
    private final Set<String> symbols;

    private TakenCodes(Set<String> texts, Set<String> symbols) {
        this.texts = texts;
        this.symbols = symbols;
    }

    public static TakenCodes of(Collection<String> codes) {
        TakenCodes taken = new TakenCodes(new HashSet<>(), new HashSet<>());
        codes.forEach(taken::take);
        return taken;
    }

    /** The same ones, to be added to by itself. */
    public TakenCodes copy() {
        return new TakenCodes(new HashSet<>(texts), new HashSet<>(symbols));
    }

    /** Takes a code; false if it was taken. */
    public boolean take(String code) {
        texts.add(code);
        return symbols.add(PotCode.symbols(code));
    }

    /** The highest number of a run that is taken, 0 if none is. */
    int highest(CodeRun run) {
        Pattern form = Pattern.compile(
                Pattern.quote(run.before()) + "([0-9]{1,5})" + Pattern.quote(run.after()) + "-[0-9A-Z]");
        return texts.stream()
                .filter(text -> text.startsWith(run.before()))
                .map(form::matcher)
                .filter(Matcher::matches)
                .mapToInt(parts -> Integer.parseInt(parts.group(1)))
                .max()
                .orElse(0);
    }
}
