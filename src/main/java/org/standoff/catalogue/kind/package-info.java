/**
 * The kinds of items that come with the service: each reads its files into the records of the
 * package whose physics uses them, and tells what no schema can see. Every kind is a bean; a new
 * one stands beside these without a change to any of them.
 */
package org.standoff.catalogue.kind;
