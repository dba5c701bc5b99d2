package org.standoff.contract.generated;

/**
 * A call and what should come of it.
 *
 * @param operation the operation that it goes to
 * @param label what is tried
 */
record Case(Api.Operation operation, String label, Call call, Expected expected) {}
