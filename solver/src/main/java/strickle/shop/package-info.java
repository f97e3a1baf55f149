/**
 * The general scheduling engine: activities, renewable resources with calendars, minimum and
 * maximum waits, shared lots, due dates with weights. It knows no concrete; a studio's week and a
 * published instance are compiled into the same {@link strickle.shop.Shop} and solved by the same
 * code.
 */
package strickle.shop;
