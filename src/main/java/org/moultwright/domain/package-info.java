/** The keeper's world as plain values: broods, stages, containers, looks, the count ledger, readings. */
@NullMarked
package org.moultwright.domain;

import org.jspecify.annotations.NullMarked;
