package org.moultwright.ui.control;

import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.javafx.FontIcon;

/**
 * The icons of the workbench, by what each stands for. They are glyphs of the Material Design Icons; its own tables have
 * seven thousand names, of which a desk that opens would read those of whole letters of the alphabet.
 */
public enum Sign implements Ikon {
    ATTENTION("mdi2a-alert-circle-outline", 0xF05D6),
    ALARM("mdi2b-bell-ring-outline", 0xF009F),
    ACCURACY("mdi2c-chart-histogram", 0xF0129),
    FORECAST("mdi2c-chart-timeline-variant", 0xF0E93),
    NOT_TICKED("mdi2c-checkbox-blank-outline", 0xF0131),
    TICKED("mdi2c-checkbox-marked-outline", 0xF0135),
    ROUND("mdi2c-clipboard-check-outline", 0xF08A8),
    SETTINGS("mdi2c-cog-outline", 0xF08BB),
    SHELF("mdi2d-dresser-outline", 0xF0F4B),
    BROODS("mdi2e-egg-outline", 0xF13F2),
    REGISTER("mdi2f-format-list-bulleted-square", 0xF0DD0),
    POTTING("mdi2p-pot-outline", 0xF02FF),
    CLIMATE("mdi2t-thermometer", 0xF050F);

    private final String description;
    private final int code;

    Sign(String description, int code) {
        this.description = description;
        this.code = code;
    }

    /** Makes the glyphs known to the toolkit, once; on any thread, once the toolkit runs. */
    public static void load() {
        FontIcon.of(ROUND);
    }

    @Override
    public String getDescription() {
        return description;
    }

    @Override
    public int getCode() {
        return code;
    }
}
