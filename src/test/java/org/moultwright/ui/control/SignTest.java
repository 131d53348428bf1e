package org.moultwright.ui.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ServiceLoader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.kordamp.ikonli.IkonHandler;

class SignTest {
    @ParameterizedTest
    @EnumSource
    void isAGlyphOfTheTypefaceByTheNameItHasThere(Sign sign) {
        IkonHandler typeface = ServiceLoader.load(IkonHandler.class).stream()
                .map(ServiceLoader.Provider::get)
                .filter(handler -> handler.supports(sign.getDescription()))
                .findFirst()
                .orElseThrow();

        assertEquals(typeface.resolve(sign.getDescription()).getCode(), sign.getCode());
        assertTrue(sign.getDescription().startsWith("mdi2"), sign.getDescription());
    }
}
