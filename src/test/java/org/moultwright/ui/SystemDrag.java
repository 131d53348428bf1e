package org.moultwright.ui;

import com.sun.javafx.scene.input.DragboardHelper;
import com.sun.javafx.tk.TKClipboard;
import com.sun.javafx.tk.TKDropTargetListener;
import com.sun.javafx.tk.Toolkit;
import java.lang.reflect.Constructor;
import java.lang.reflect.Proxy;
import java.util.EnumSet;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.TransferMode;

/**
 * A drag from another program, as the system tells a window of it: what is hit, and which events are sent in which order,
 * is the toolkit's doing.
 */
public final class SystemDrag {
    private final Scene scene;
    private final TKDropTargetListener window;
    private final TKClipboard board;

    private SystemDrag(Scene scene, TKDropTargetListener window, TKClipboard board) {
        this.scene = scene;
        this.window = window;
        this.board = board;
    }

    /** A drag of these, not yet over the window. On the toolkit's thread. */
    public static SystemDrag of(ClipboardContent content, Scene scene) {
        TKClipboard board = Toolkit.getToolkit().createLocalClipboard();
        DragboardHelper.createDragboard(board).setContent(content);
        TKClipboard dragged = (TKClipboard) Proxy.newProxyInstance(
                SystemDrag.class.getClassLoader(), new Class<?>[] {TKClipboard.class}, (proxy, method, arguments) -> {
                    // A board that is no drag's says no modes.
                    return method.getName().equals("getTransferModes")
                            ? EnumSet.of(TransferMode.COPY, TransferMode.MOVE)
                            : method.invoke(board, arguments);
                });
        try {
            Constructor<?> constructor =
                    Class.forName("javafx.scene.Scene$DropTargetListener").getDeclaredConstructor(Scene.class);
            constructor.setAccessible(true);
            return new SystemDrag(scene, (TKDropTargetListener) constructor.newInstance(scene), dragged);
        } catch (ReflectiveOperationException otherToolkit) {
            throw new IllegalStateException(otherToolkit);
        }
    }

    /** Carries it over the middle of a node; says whether it could be let go there. */
    public boolean carryOver(Node node) {
        Bounds place = node.localToScene(node.getBoundsInLocal());
        return carryTo(place.getCenterX(), place.getCenterY());
    }

    /** Carries it to a place in the scene; says whether it could be let go there. */
    public boolean carryTo(double x, double y) {
        window.dragEnter(x, y, onScreen(x, true), onScreen(y, false), TransferMode.COPY, board);
        return window.dragOver(x, y, onScreen(x, true), onScreen(y, false), TransferMode.COPY) != null;
    }

    /** Lets it go there. */
    public void letGoOver(Node node) {
        Bounds place = node.localToScene(node.getBoundsInLocal());
        double x = place.getCenterX();
        double y = place.getCenterY();
        window.drop(x, y, onScreen(x, true), onScreen(y, false), TransferMode.COPY);
    }

    private double onScreen(double inScene, boolean isAcross) {
        return isAcross
                ? scene.getWindow().getX() + scene.getX() + inScene
                : scene.getWindow().getY() + scene.getY() + inScene;
    }
}
