/**
 * The service as callers see it: one resource class a noun, with the representations of its
 * answers. No arithmetic and no composition happens here. Names on the wire are snake_case with the
 * unit last. The only package that sees Jakarta REST. May use answers, kit, session and catalogue.
 */
package org.standoff.rest;
