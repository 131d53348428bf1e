package org.moultwright.ui.register;

import java.util.Map;
import java.util.Optional;
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
            return sameInAnyCase(text).<Found>map(OnPot::new).orElseGet(() -> new OnNone(refused.sentence()));
        }
        String code = reading.code().map(PotCode::text).orElse(text);
        PotRow row = pots.get(code);
        return row != null
                ? new OnPot(row)
                : new OnNone(Texts.say(
                        "{0} is a whole code, but no pot of this register has it. Was it undone, or is it another room's?",
                        code));
    }

    private Optional<PotRow> sameInAnyCase(String text) {
        return pots.values().stream()
                .filter(row -> row.code().equalsIgnoreCase(text))
                .findFirst();
    }
}
