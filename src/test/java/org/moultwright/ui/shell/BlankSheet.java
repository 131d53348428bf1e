package org.moultwright.ui.shell;

/** A sheet with nothing on it, for frames that are looked at for something else. */
public final class BlankSheet extends OverSheet {
    @Override
    protected void opened() {
        requestFocus();
    }
}
