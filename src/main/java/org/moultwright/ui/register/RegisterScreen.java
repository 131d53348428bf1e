package org.moultwright.ui.register;

import org.moultwright.language.Texts;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;
import org.moultwright.workflow.RoomReading;

/** The register, as a screen of the frame. */
public final class RegisterScreen {
    public static final ScreenName NAME = new ScreenName("register", Texts.say("Register"), Sign.REGISTER);

    /** What is worked out of a room for the table, best aside. */
    public static final RoomReading<?> READING = PotRow.ALL;

    private RegisterScreen() {}

    public static Screen of(RegisterDesk desk) {
        RegisterPages view = new RegisterPages(desk);
        return new PlainScreen(NAME, view, view::takeFocus, RegisterKeys.HINTS);
    }
}
