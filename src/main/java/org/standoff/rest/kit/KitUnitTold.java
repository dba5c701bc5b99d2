package org.standoff.rest.kit;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A {@link UnitTold} as the description tells it within a {@link KitTold}. */
@Schema(
    name = "KitUnitTold",
    description = "A unit of a whole kit, where no address tells its serial number",
    allOf = UnitTold.class,
    requiredProperties = "serial")
interface KitUnitTold {}
