package org.moultwright.ui.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.ContainerKind;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.Standing;

class ShelfWordsTest {
    @Test
    void countsOnlyWhatIsLivedInAndNamesItByWhatItIs() {
        assertThat(within(hammock(0), hammock(0), hammock(0))).isEqualTo("no animals");
        assertThat(within(tray(56), tray(50), tray(0), hammock(0))).isEqualTo("106 animals in 2 trays");
        assertThat(within(hammock(40))).isEqualTo("40 animals in 1 hammock");
        assertThat(within(tray(1), hammock(40))).isEqualTo("41 animals in 2 containers");
        assertThat(ShelfWords.within(standing(ContainerKind.ROOM, 0, box(tray(1)), box(tray(2)))))
                .isEqualTo("3 animals in 2 trays");
    }

    @Test
    void aSacNobodyOpenedIsSomething() {
        assertThat(within(sac(), hammock(0))).isEqualTo("1 sac not opened yet");
        assertThat(within(sac(), sac())).isEqualTo("2 sacs not opened yet");
        assertThat(within(tray(56), sac())).isEqualTo("56 animals in 1 tray, 1 sac not opened yet");
        assertThat(ShelfWords.card(sac(), Vocabulary.ENGLISH_HOBBY)).isEqualTo("X, hammock, a sac, not opened yet");
    }

    private static String within(Standing... contents) {
        return ShelfWords.within(box(contents));
    }

    private static Standing box(Standing... contents) {
        return standing(ContainerKind.BOX, 0, contents);
    }

    private static Standing tray(int alive) {
        return standing(ContainerKind.TRAY, alive);
    }

    private static Standing hammock(int alive) {
        return standing(ContainerKind.HAMMOCK, alive);
    }

    private static Standing sac() {
        return standing(ContainerKind.HAMMOCK, 0, true);
    }

    private static Standing standing(ContainerKind kind, int alive, Standing... contents) {
        return standing(kind, alive, false, contents);
    }

    private static Standing standing(ContainerKind kind, int alive, boolean holdsSac, Standing... contents) {
        List<Standing.Occupants> occupants =
                alive == 0 ? List.of() : List.of(new Standing.Occupants("CC-26-A", "Chromatopelma", alive, Map.of()));
        return new Standing(
                "X",
                kind,
                Optional.empty(),
                Optional.empty(),
                occupants,
                holdsSac,
                Optional.empty(),
                List.of(contents));
    }
}
