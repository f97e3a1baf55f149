package strickle.api;

import strickle.json.contract.Operation;

/**
 * An operation of the contract and what does it.
 *
 * @param operation what the contract says
 * @param work does it
 */
record Route(Operation operation, Work work) {

  /** Does what was asked. */
  @FunctionalInterface
  interface Work {

    /**
     * Does it.
     *
     * @throws Refusal or any exception that {@link Problems} knows, to refuse
     */
    Reply reply(Call call);
  }
}
