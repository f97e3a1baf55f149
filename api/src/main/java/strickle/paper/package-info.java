/**
 * What leaves the studio on paper or for other programs: day sheets and price lists as PDF, the
 * plan as a calendar (RFC 5545), orders and prices as CSV (RFC 4180). Records go in and bytes or
 * texts come out; nobody here knows a file, the network or the clock.
 */
package strickle.paper;
