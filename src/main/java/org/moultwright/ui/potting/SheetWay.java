package org.moultwright.ui.potting;

import org.moultwright.ui.label.PreviewModel;
import org.moultwright.ui.label.SheetForm;

/** A stack of sheets labels go on: how it is laid in, and how it will look. */
record SheetWay(SheetForm form, PreviewModel preview) {}
