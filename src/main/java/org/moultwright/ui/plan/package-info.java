/** What a keeper plans with, shared by the screens that plan. */
@NullMarked
package org.moultwright.ui.plan;

import org.jspecify.annotations.NullMarked;
