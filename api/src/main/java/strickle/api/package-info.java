/**
 * The service: what it can be asked over HTTP, who may ask, and what a refusal looks like. The only
 * place that knows the HTTP library; routes are thin and leave the thinking to the other rooms.
 */
package strickle.api;
