package org.moultwright.ui.broods;

/** What to mind with a sac and its mother, in plain words. Common practice, no source. */
final class SacCautions {
    static final String HAIRS = "Goggles and gloves on: the sac's silk can hold hairs that harm eyes.";
    static final String MOTHER = "The mother bites for her sac: box her first.";
    static final String HYGIENE = "Lift mouldy eggs out first, with a tool of their own.";

    private SacCautions() {}
}
