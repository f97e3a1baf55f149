/**
 * What the service's contract says, as plain data: its operations, what they take and what they
 * answer. The routes are made from it, and so is the OpenAPI document; neither can say more.
 */
package strickle.json.contract;
