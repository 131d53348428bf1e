package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.materialdesign2.MaterialDesignE;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.theme.Palette;

/** The broods, as a screen of the frame. */
public final class BroodsScreen implements Screen {
    private final BroodsView view;

    public BroodsScreen(BroodsDesk desk, ObservableObjectValue<Palette> palette) {
        this.view = new BroodsView(new BroodsViewModel(desk), palette);
    }

    @Override
    public String id() {
        return "broods";
    }

    @Override
    public String word() {
        return "Broods";
    }

    @Override
    public Ikon icon() {
        return MaterialDesignE.EGG_OUTLINE;
    }

    @Override
    public Node node() {
        return view;
    }

    @Override
    public void shown() {
        view.takeFocus();
    }

    @Override
    public List<KeyHint> keys() {
        List<KeyHint> keys = new ArrayList<>(List.of(
                new KeyHint("↑ ↓", "choose a brood"),
                new KeyHint("← →", "read the day before or after in words"),
                new KeyHint("Shift + ← →", "a week before or after"),
                new KeyHint("Ctrl + N", "open a sac"),
                new KeyHint("Ctrl + O", "take in a brood folder")));
        if (view.hasDemoRoom()) {
            keys.add(new KeyHint("Ctrl + D", "look around in the demo room"));
        }
        return keys;
    }
}
