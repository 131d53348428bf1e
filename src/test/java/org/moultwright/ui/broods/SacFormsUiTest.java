package org.moultwright.ui.broods;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.Parent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.ToolkitThread;
import org.testfx.framework.junit5.ApplicationExtension;

/** The forms about a sac in both themes and two sizes, to be looked at. */
@ExtendWith(ApplicationExtension.class)
class SacFormsUiTest {
    private static final Map<String, Supplier<Parent>> STATES = Map.of(
            "sac-begin", SacPictures::begin,
            "sac-begin-refused", SacPictures::beginRefused,
            "sac-pull", SacPictures::pull,
            "sac-opening", SacPictures::opening,
            "sac-question", SacPictures::question,
            "sac-weighed", SacPictures::weighed,
            "sac-interrupted", SacPictures::interrupted);

    @Test
    void everyStateIsPictured() {
        STATES.forEach((name, state) -> {
            ScreenShots.of(name, 1188, 752, look -> state.get());
            ScreenShots.of(name + "-large", 1828, 1032, look -> state.get());
        });
        assertThat(ToolkitThread.ask(SacPictures::opening)).isNotNull();
    }
}
