package org.moultwright.ui.round;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;

/** The daily round, as a screen of the frame. */
public final class RoundScreen implements Screen {
    public static final ScreenName NAME = new ScreenName("round", Texts.say("Round"), Sign.ROUND);

    private final RoundViewModel model;
    private final RoundView view;

    public RoundScreen(RoundDesk desk) {
        this.model = new RoundViewModel(desk);
        this.view = new RoundView(model);
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
    public List<Region> canWait() {
        return view.besideTheSheet();
    }

    @Override
    public void shown() {
        model.focusFirstRow();
    }

    @Override
    public List<KeyHint> keys() {
        return RoundKeys.HINTS;
    }
}
