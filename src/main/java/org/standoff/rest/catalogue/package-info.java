/**
 * The catalogue as callers read it: packs, and for each kind a list and its items. One resource a
 * noun; what they have in common stands in {@link org.standoff.rest.catalogue.ItemListing}.
 */
package org.standoff.rest.catalogue;
