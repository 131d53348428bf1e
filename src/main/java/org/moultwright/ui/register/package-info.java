/** The register: every pot ever made, what became of its animal, and what is written down of many at one go. */
@NullMarked
package org.moultwright.ui.register;

import org.jspecify.annotations.NullMarked;
