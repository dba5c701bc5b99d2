package org.standoff.contract.generated;

/** What calls are sent to: the running service, or a stand-in with a planted fault. */
@FunctionalInterface
interface Service {

  Reply send(Call call);
}
