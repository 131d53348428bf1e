package org.moultwright.ui.potting;

import java.util.List;
import javafx.scene.Node;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;

/** The potting bench, as a screen of the frame. */
public final class PottingScreen implements Screen {
    public static final ScreenName NAME = new ScreenName("potting", Texts.say("Potting"), Sign.POTTING);

    private final PottingView view;

    public PottingScreen(PottingDesk desk) {
        this.view = new PottingView(new PottingViewModel(desk));
    }

    @Override
    public ScreenName name() {
        return NAME;
    }

    @Override
    public Node node() {
        return view;
    }

    @Override
    public void shown() {
        view.focusFirst();
    }

    @Override
    public List<KeyHint> keys() {
        return List.of(
                new KeyHint("Tab", Texts.say("next field")),
                new KeyHint("Ctrl + D", Texts.say("another pot size for this tray")),
                new KeyHint("Ctrl + S", Texts.say("save labels as PDF")),
                new KeyHint("Ctrl + P", Texts.say("print labels")),
                new KeyHint("Page Down", Texts.say("next sheet")),
                new KeyHint("Page Up", Texts.say("sheet before")),
                new KeyHint("Ctrl + Enter", Texts.say("done, the animals are in their pots")));
    }
}
