/**
 * What callers are told when something is wrong: problem details as in RFC 9457, with every fault
 * of a request at once, each at its JSON pointer (RFC 6901) or parameter. Neither class names nor
 * traces leave the house.
 */
package org.standoff.rest.problem;
