/** What the program finds on the machine it runs on: folders by platform, serial ports. */
@NullMarked
package org.moultwright.boot.machine;

import org.jspecify.annotations.NullMarked;
