/** Kit over HTTP: what has an owner and a date. */
package org.standoff.rest.kit;
