package org.moultwright.domain.code;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.code.PotCodeReading.Reason;
import org.moultwright.domain.code.PotCodeReading.Refused;

class PotCodeTest {
    private static final PotCode FIRST = new PotCode(new PotPrefix("26A"), 1);

    @Test
    void isPrefixCounterAndCheckCharacter() {
        assertThat(FIRST.stem()).isEqualTo("26A-001");
        assertThat(FIRST.text()).matches("26A-001-[0-9A-Z]");
        assertThat(new PotCode(new PotPrefix("26CC"), 1234).stem()).isEqualTo("26CC-1234");
    }

    @ParameterizedTest
    @ValueSource(longs = {3, 99, 20260503})
    void readsBackWhateverItWrites(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            PotCode code = anyCode(random);
            String text = code.text();
            String typed = text.toLowerCase(java.util.Locale.ROOT)
                    .replace('1', 'l')
                    .replace('0', 'o')
                    .replace("-", " ");
            assertThat(PotCode.read(text).code()).as("seed %d: %s", seed, text).contains(code);
            assertThat(PotCode.read(typed).code())
                    .as("seed %d: %s", seed, typed)
                    .contains(code);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 77})
    void neverTakesOneWrongSymbolForAnotherPot(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            PotCode code = anyCode(random);
            String text = code.text().replace("-", "");
            int at = random.nextInt(text.length());
            for (char other : PotAlphabet.CHECK.alphabet().toCharArray()) {
                String wrong = text.substring(0, at) + other + text.substring(at + 1);
                assertThat(PotCode.read(wrong).code().isPresent())
                        .as("seed %d: %s read as %s", seed, text, wrong)
                        .isEqualTo(wrong.equals(text));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'', TOO_SHORT",
        "26A-001, TOO_SHORT",
        "26A-0*1-N, UNKNOWN_SYMBOL",
        "26U-001-N, UNKNOWN_SYMBOL",
        "CC-26-A-001, OTHER_FORM",
        "26A-0001-N, OTHER_FORM",
        "26A-000-N, OTHER_FORM",
        "26ABCD-001-N, OTHER_FORM"
    })
    void saysWhatIsWrong(String typed, Reason reason) {
        assertThat(PotCode.read(typed)).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.reason()).isEqualTo(reason);
            assertThat(refused.sentence()).endsWith(".");
        });
    }

    @Test
    void namesAMisreadCode() {
        String misread = FIRST.text().replace("001", "002");
        assertThat(PotCode.read(misread)).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.reason()).isEqualTo(Reason.WRONG_CHECK_CHARACTER);
            assertThat(refused.sentence()).startsWith("'" + misread + "' is misread");
        });
    }

    @Test
    void countsFromOne() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PotCode(new PotPrefix("26A"), 0))
                .withMessageContaining("counter");
    }

    private static PotCode anyCode(Random random) {
        StringBuilder prefix = new StringBuilder("%02d".formatted(random.nextInt(100)));
        for (int letters = 1 + random.nextInt(3); letters > 0; letters--) {
            prefix.append(PotAlphabet.LETTERS.charAt(random.nextInt(PotAlphabet.LETTERS.length())));
        }
        return new PotCode(new PotPrefix(prefix.toString()), 1 + random.nextInt(12_000));
    }
}
