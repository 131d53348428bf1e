package org.moultwright.domain.code;

import java.util.Random;

/** Patterns of codes, and codes made by them, as a keeper might think of. */
final class AnyPattern {
    private static final String[] OWN = {"", "", "-", "-", "A", "B2", "7", "Z-", "X9", "1"};

    private AnyPattern() {}

    /** One by which codes can be made. */
    static CodePattern any(Random random) {
        while (true) {
            StringBuilder written = new StringBuilder();
            int parts = 1 + random.nextInt(5);
            int number = random.nextInt(parts);
            for (int i = 0; i < parts; i++) {
                written.append(OWN[random.nextInt(OWN.length)]);
                CodeField[] fields = CodeField.values();
                written.append(
                        i == number
                                ? "{" + "n".repeat(1 + random.nextInt(4)) + "}"
                                : fields[random.nextInt(fields.length)].written());
            }
            if (CodePattern.problemOf(written.toString()).isEmpty()) {
                return new CodePattern(written.toString());
            }
        }
    }

    static CodeFacts facts(Random random) {
        return new CodeFacts(
                2020 + random.nextInt(12),
                letters(random, 3),
                letters(random, 2),
                letters(random, 2) + random.nextInt(13));
    }

    static PotCode anyCode(Random random) {
        return any(random).run(facts(random)).code(1 + random.nextInt(12_000));
    }

    private static String letters(Random random, int most) {
        StringBuilder letters = new StringBuilder();
        for (int i = 1 + random.nextInt(most); i > 0; i--) {
            letters.append(PotAlphabet.LETTERS.charAt(random.nextInt(PotAlphabet.LETTERS.length())));
        }
        return letters.toString();
    }
}
