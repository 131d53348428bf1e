package org.moultwright.ui.register;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.code.PotCodeReading;
import org.moultwright.language.Texts;

/**
 * What a scanned or typed code says of the register: the pot it names, or a sentence that tells why there is none.
 *
 * @param pots the register's pots by code
 */
record ScanBack(Map<String, PotRow> pots) {

    /** What was found. */
    sealed interface Found {}

    /** The code is on this pot. */
    record OnPot(PotRow pot) implements Found {}

    /** The code is on no pot, and why. */
    record OnNone(String sentence) implements Found {}

    /** A pot taken in from elsewhere may have a code of any form, so that what stands on a pot to the letter comes first. */
    Found find(String typed) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return new OnNone(Texts.say("Scan a label, or type its code."));
        }
        PotRow toTheLetter = pots.get(text);
        if (toTheLetter != null) {
            return new OnPot(toTheLetter);
        }
        PotCodeReading reading = PotCode.read(text);
        if (reading instanceof PotCodeReading.Refused refused) {
            return any(row -> row.code().equalsIgnoreCase(text))
                    .<Found>map(OnPot::new)
                    .orElseGet(() -> new OnNone(refused.sentence()));
        }
        return any(row -> reading.symbols()
                        .filter(PotCode.symbols(row.code())::equals)
                        .isPresent())
                .<Found>map(OnPot::new)
                .orElseGet(() -> new OnNone(Texts.say(
                        "{0} is a whole code, but no pot of this register has it. Was it undone, or is it another room's?",
                        text.toUpperCase(Locale.ROOT))));
    }

    private Optional<PotRow> any(Predicate<PotRow> condition) {
        return pots.values().stream().filter(condition).findFirst();
    }
}
