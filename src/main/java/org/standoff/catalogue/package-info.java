/**
 * What is known: pack files as checked, immutable records of the packages whose physics uses them,
 * found in one {@link org.standoff.catalogue.Catalogue} snapshot. Says what a kind of item, a pack
 * and a source of packs are. Figures keep the units of the files, which stand last in each name.
 * May use everything below it; only {@code org.standoff.catalogue.load} knows files.
 */
package org.standoff.catalogue;
