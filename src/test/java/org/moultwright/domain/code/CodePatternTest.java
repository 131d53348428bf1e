package org.moultwright.domain.code;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.Brood;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Stage;

class CodePatternTest {
    private static final Instant MAY_2026 = Instant.parse("2026-05-05T20:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "CC-26-A, 26A-001",
        "cc-26-b, 26B-001",
        "CC-26-L, 26CC-001",
        "A, 26A-001",
        "2026/7, 26X-001",
        "TARANTULA, 26X-001"
    })
    void isOfItselfTheYearAndTheBroodsLetters(String broodCode, String stem) {
        assertThat(CodePattern.STANDARD.run(facts(broodCode, "A1")).code(1).stem())
                .isEqualTo(stem);
    }

    @ParameterizedTest
    @CsvSource({
        "{yyyy}{brood}-{nnnn}, 2026A-0007",
        "{taxon}{yy}-{nn}, CC26-07",
        "R2-{nnn}-{tray}, R2-007-A1",
        "{Tray}{n}, A17",
        "' k-{YY}-{NNN} ', K-26-007"
    })
    void takesItsPartsInTheirOrder(String typed, String stem) {
        CodePattern pattern = CodePattern.read(typed).orElseThrow();
        assertThat(pattern.run(facts("CC-26-A", "A1")).code(7).stem()).isEqualTo(stem);
    }

    @Test
    void aTraysCodeIsWrittenInSymbolsNobodyTakesForOthers() {
        CodePattern pattern = new CodePattern("{tray}-{nnn}");
        assertThat(pattern.run(facts("CC-26-A", "Lid 0u2")).code(1).stem()).isEqualTo("11D0-001");
        assertThat(pattern.run(facts("CC-26-A", "ü")).code(1).stem()).isEqualTo("X-001");
    }

    @Test
    void takesTheYearOfLayingInTheKeepersZone() {
        Instant newYear = Instant.parse("2025-12-31T23:30:00Z");
        Brood brood = brood("CC-26-A", Optional.of(new InstantRange(newYear.minusSeconds(3600), newYear)));
        assertThat(CodeFacts.of(brood, "A1", MAY_2026).year()).isEqualTo(2026);
    }

    @Test
    void countsOnFromTheHighestOfItsOwn() {
        CodeRun run = new CodeRun("26A-", "", 3);
        List<String> pots = List.of(
                run.code(7).text(),
                run.code(3).text(),
                new CodeRun("26B-", "", 3).code(40).text(),
                "an older one 12");
        assertThat(run.next(2, TakenCodes.of(pots))).containsExactly(run.code(8), run.code(9));
        assertThat(run.next(1, TakenCodes.of(List.of()))).containsExactly(run.code(1));
    }

    @Test
    void passesOverACodeOfTheSameSymbols() {
        TakenCodes taken = TakenCodes.of(List.of(new PotCode("26-A002").text()));
        CodeRun run = new CodeRun("26A-", "", 3);
        assertThat(run.next(2, taken)).containsExactly(run.code(1), run.code(3));
    }

    /** Whatever patterns follow one another, and whatever stands on pots already. */
    @ParameterizedTest
    @ValueSource(longs = {1, 26, 20260505})
    void noTwoPotsEverShareACode(long seed) {
        Random random = new Random(seed);
        TakenCodes taken = TakenCodes.of(List.of("an older numbering 12", "P1"));
        Set<String> seen = new HashSet<>();
        List<CodePattern> patterns =
                IntStream.range(0, 40).mapToObj(i -> AnyPattern.any(random)).toList();
        List<String> given = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            CodePattern pattern = patterns.get(random.nextInt(patterns.size()));
            for (PotCode code : pattern.run(AnyPattern.facts(random)).next(1 + random.nextInt(20), taken)) {
                assertThat(seen.add(code.symbols()))
                        .as("seed %d: %s of %s given twice", seed, code, pattern.written())
                        .isTrue();
                assertThat(PotCode.read(code.text()).symbols()).contains(code.symbols());
                given.add(code.text());
            }
        }
        assertThat(TakenCodes.of(given).copy().take(given.get(0))).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{yy}{brood}|Codes need a number: write {nnn} where it goes, an n a digit.",
                "''|Codes need a number: write {nnn} where it goes, an n a digit.",
                "{nn}-{nnn}|One number is enough, and here are 2.",
                "26L-{nnn}|Leave out L: I, L, O and U look like 1, 0 and V, and are never part of a code.",
                "26#-{nnn}|'#' cannot stand in a code. Letters, digits and hyphens can.",
                "{year}-{nnn}|There is no {year}. There are {yy}, {yyyy}, {brood}, {taxon}, {tray} and {nnn}.",
                "{yy-{nnn}|A brace is not closed: fields are written like {nnn}.",
                "{n}|Too short: a code has at least 3 symbols before its check character.",
                "ABCDEFGH{yyyy}{brood}{tray}{nnn}|Too long: such codes may come to have 24 symbols, and 20 are the most."
            })
    void saysWhyNoCodesCanBeMade(String typed, String sentence) {
        assertThat(CodePattern.problemOf(typed)).contains(sentence);
        assertThat(CodePattern.read(typed)).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> new CodePattern(typed));
    }

    @Test
    void runsAreToldByTheirEnds() {
        CodeRun a = new CodeRun("26A-", "", 3);
        CodeRun tray = new CodeRun("26-", "-B1", 2);
        List<String> codes = List.of(
                a.code(9).text(),
                a.code(10).text(),
                a.code(11).text(),
                tray.code(99).text(),
                tray.code(100).text(),
                a.code(13).text());
        assertThat(CodeSpan.of(codes))
                .containsExactly(
                        new CodeSpan(a.code(9).text(), a.code(11).text(), 3),
                        new CodeSpan(tray.code(99).text(), tray.code(100).text(), 2),
                        new CodeSpan(a.code(13).text(), a.code(13).text(), 1));
        assertThat(CodeSpan.of(List.of("P1", "x"))).hasSize(2);
    }

    private static CodeFacts facts(String broodCode, String tray) {
        return CodeFacts.of(brood(broodCode, Optional.empty()), tray, MAY_2026);
    }

    private static Brood brood(String code, Optional<InstantRange> laid) {
        return new Brood(
                code,
                "Chromatopelma cyaneopubescens",
                ZoneId.of("Europe/Berlin"),
                laid,
                Optional.empty(),
                List.of(Stage.values()),
                Brood.DEFAULT_REFERENCE_CELSIUS,
                Optional.empty());
    }
}
