package org.moultwright.ui;

import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.testfx.api.FxToolkit;

/**
 * A window for all tests of a class, given to each that asks for a {@link Stage}. For tests that look and do not type:
 * an extension that makes a window for each, and waits by the clock for each question, took most of their time.
 */
final class OneWindow implements BeforeAllCallback, AfterAllCallback, ParameterResolver {
    private static final Namespace SPACE = Namespace.create(OneWindow.class);

    /** What a layout puts off may lead to a layout that puts off more. */
    private static final int TIMES_LAID_OUT = 3;

    @Override
    public void beforeAll(ExtensionContext tests) throws TimeoutException {
        FxToolkit.registerPrimaryStage();
        tests.getStore(SPACE).put(Stage.class, ToolkitThread.ask(Stage::new));
    }

    @Override
    public void afterAll(ExtensionContext tests) {
        Stage window = window(tests);
        ToolkitThread.run(window::close);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
        return parameter.getParameter().getType() == Stage.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext test) {
        return window(test);
    }

    /** Lays out what a window shows, and does what that put off. */
    static void settle(Scene scene) {
        for (int time = 0; time < TIMES_LAID_OUT; time++) {
            ToolkitThread.run(() -> {
                scene.getRoot().applyCss();
                scene.getRoot().layout();
            });
        }
    }

    private static Stage window(ExtensionContext test) {
        return test.getStore(SPACE).get(Stage.class, Stage.class);
    }
}
