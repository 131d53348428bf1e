package org.moultwright.ui.broods;

import org.moultwright.language.Texts;

/** What to mind with a sac and its mother, in plain words. Common practice, no source. */
final class SacCautions {
    static final String HAIRS = Texts.say("Goggles and gloves on: the sac's silk can hold hairs that harm eyes.");
    static final String MOTHER = Texts.say("The mother bites for her sac: box her first.");
    static final String HYGIENE = Texts.say("Lift mouldy eggs out first, with a tool of their own.");

    private SacCautions() {}
}
