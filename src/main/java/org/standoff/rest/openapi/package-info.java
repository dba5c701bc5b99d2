/**
 * Completes the API description that is generated from the code (OpenAPI 3.1): what every operation
 * may refuse, how constants are spelt, which parameters a GET reads from the members of a record.
 */
package org.standoff.rest.openapi;
